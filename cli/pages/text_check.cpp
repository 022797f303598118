#include "pages/text.hpp"
#include "pages/text_parts.hpp"

namespace standin::cli {
namespace {

std::string findings(const char* what, const std::vector<Error>& errors, const Look& look) {
    std::string out;
    for (const auto& e : errors) {
        out += wrap(std::string(what) + ": " + (e.where.empty() ? "" : e.where + ": ") + e.message, look.width - 2, 2, 2) + "\n";
        for (const auto& hint : e.hints) out += wrap(hint, look.width - 4, 4, 2) + "\n";
    }
    return out;
}

std::string counts_part(const KnowledgeCounts& c, const Look& look) {
    Table counts({{"", Align::left}, {"", Align::right}});
    const auto row = [&](const char* what, std::size_t n) { counts.row({what, std::to_string(n)}); };
    row("ingredients", c.ingredients);
    row("names", c.names);
    row("preparations", c.preparations);
    row("swaps", c.swaps);
    row("of these derived", c.derived_swaps);
    row("rules", c.rules);
    std::string out = heading("What it holds", look) + counts.page(look);
    Table kinds({{"", Align::left}, {"", Align::right}});
    kinds.row({"published", std::to_string(c.published)});
    kinds.row({"common-practice", std::to_string(c.common_practice)});
    kinds.row({"from-memory", std::to_string(c.from_memory)});
    kinds.row({"judgement", std::to_string(c.judgement)});
    return out + heading("Where its numbers come from", look) + kinds.page(look);
}

std::string count(std::size_t n, const char* what) { return std::to_string(n) + " " + what + (n == 1 ? "" : "s"); }

}  // namespace

std::string check_text(const CheckAnswer& answer, const Look& look) {
    std::string page;
    for (const auto& f : answer.files) {
        std::string verdict = f.ok ? "sound" : count(f.errors.size(), "error");
        if (!f.warnings.empty()) verdict += ", " + count(f.warnings.size(), "warning");
        page += f.file + ": " + f.kind + ", " + verdict + "\n" + findings("error", f.errors, look) + findings("warning", f.warnings, look);
    }
    return answer.counts ? page + counts_part(*answer.counts, look) : page;
}

}  // namespace standin::cli
