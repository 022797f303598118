#include "prices.hpp"

#include <filesystem>

#include "session.hpp"

namespace standin::cli {

std::optional<std::string> prices_file(const Call& call) {
    if (call.prices) return call.prices;
    if (call.operands.empty() || call.operands.front() == "-") return std::nullopt;
    const auto beside = std::filesystem::path(call.operands.front()).parent_path() / "prices.txt";
    std::error_code ignored;
    if (!std::filesystem::is_regular_file(beside, ignored)) return std::nullopt;
    return beside.string();
}

Result<Prices> price_list(const Call& call, const Engine& engine) {
    const auto file = prices_file(call);
    if (!file) return Prices{};
    const auto text = read_text(*file);
    if (!text) return Failure(text.error());
    auto prices = engine.read_prices(*text, shown_name(*file));
    if (!prices) return Failure(prices.error());
    return Prices(std::move(*prices));
}

Result<Extras> extras_of(const Engine& engine, const Formula& formula, const Prices& prices, bool paper,
                         const std::optional<SheetYield>& makes) {
    Extras beside{&engine, prices ? &*prices : nullptr, &formula};
    if (prices) {
        auto cost = engine.cost(formula, *prices, makes);
        if (!cost) return Failure(cost.error());
        beside.cost = std::move(*cost);
    }
    if (paper) {
        auto sheet = engine.paper(formula);
        if (!sheet) return Failure(sheet.error());
        beside.paper = std::move(*sheet);
    }
    return beside;
}

}  // namespace standin::cli
