#include <algorithm>

#include "render/cost_words.hpp"
#include "render/text/text_parts.hpp"
#include "render/units.hpp"

namespace standin::cli {

namespace {

std::string cost_table(const Cost& cost, const Prediction& p, const Look& look) {
    if (cost.lines.empty()) return "";
    auto dearest = cost.lines;
    std::stable_sort(dearest.begin(), dearest.end(), [](const CostLine& a, const CostLine& b) { return a.money.mid > b.money.mid; });
    Table table({{"", Align::left}, {"costs", Align::right}, {"share", Align::right}});
    for (const auto& line : dearest)
        table.row(
            {p.lines[line.line].name, money(line.money, cost.currency), chance(cost.batch.mid > 0 ? line.money.mid / cost.batch.mid : 0)});
    return "\n" + table.page(look);
}

}  // namespace

std::string cost_part(const Prediction& p, const Detail& detail, const Look& look) {
    if (!detail.beside.cost) return "";
    const Cost& cost = *detail.beside.cost;
    std::string out = heading("What it costs, by " + cost.list, look) + paragraph(cost_sentence(cost, detail.units), look);
    for (const auto& note : in_full(cost.notes, detail.units)) out += bullet(note, look);
    return out + (detail.full ? cost_table(cost, p, look) + paragraph("What is cut away is paid for too.", look) : "");
}

}  // namespace standin::cli
