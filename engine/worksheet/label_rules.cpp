#include "worksheet/label_rules.hpp"

#include <algorithm>

namespace standin {
namespace {

bool starts(const std::string& id, const std::string& with) { return id.rfind(with, 0) == 0; }

std::string head(std::string_view rules, std::string_view what) { return "label." + std::string(rules) + "." + std::string(what); }

const Parameter* record(const Knowledge& knowledge, const std::string& id) {
    const auto& all = knowledge.records().parameters;
    const auto found = std::find_if(all.begin(), all.end(), [&](const Parameter& p) { return p.id == id; });
    return found == all.end() ? nullptr : &*found;
}

double value(const Knowledge& knowledge, const std::string& id) {
    const Parameter* p = record(knowledge, id);
    return p ? p->quantity.band.mid : 0;
}

// The records whose id starts so, in the order of their values; `rest` is what follows.
struct Item {
    const Parameter* record;
    std::string rest;
};
std::vector<Item> items(const Knowledge& knowledge, const std::string& start) {
    std::vector<Item> all;
    for (const auto& p : knowledge.records().parameters)
        if (starts(p.id, start)) all.push_back({&p, p.id.substr(start.size())});
    std::stable_sort(all.begin(), all.end(),
                     [](const Item& a, const Item& b) { return a.record->quantity.band.mid < b.record->quantity.band.mid; });
    return all;
}

std::string set_with(const Knowledge& knowledge, std::string_view rules, std::string_view what) {
    return std::string(record(knowledge, head(rules, what)) ? rules : "general");
}

}  // namespace

NutritionRule nutrition_rule(const Knowledge& knowledge, std::string_view rules) {
    const std::string set = set_with(knowledge, rules, "nutrition");
    NutritionRule rule;
    if (const Parameter* about = record(knowledge, head(set, "nutrition"))) {
        rule.text = about->note;
        rule.source = about->quantity.source;
    }
    rule.fibre_in_carbohydrate = value(knowledge, head(set, "fibre-in-carbohydrate")) > 0;
    rule.salt_per_sodium = value(knowledge, head(set, "salt-per-sodium"));
    for (const auto& item : items(knowledge, head(set, "row."))) {
        rule.rows.push_back({item.rest, item.record->note});
        const std::string round = head(set, "round." + item.rest);
        const double to = value(knowledge, round + ".to");
        if (to > 0)
            rule.rounding.push_back({item.rest, value(knowledge, round + ".none"), value(knowledge, round + ".little"),
                                     value(knowledge, round + ".fine-below"), value(knowledge, round + ".fine-to"), to});
    }
    for (const auto& item : items(knowledge, head(set, "kj.")))
        rule.energy.push_back({item.rest, item.record->quantity.band.mid, value(knowledge, head(set, "kcal." + item.rest))});
    return rule;
}

NamedShareRule named_share_rule(const Knowledge& knowledge, std::string_view rules) {
    const Parameter* p = record(knowledge, head(set_with(knowledge, rules, "named-share"), "named-share"));
    return p ? NamedShareRule{p->note, p->quantity.source, p->quantity.band.mid} : NamedShareRule{};
}

std::vector<LabelLine> label_lines(const Knowledge& knowledge, std::string_view rules) {
    std::vector<LabelLine> lines;
    const auto add = [&](std::string_view set) {
        for (const auto& item : items(knowledge, head(set, "line."))) {
            std::erase_if(lines, [&](const LabelLine& line) { return line.id == item.rest; });
            lines.push_back({item.rest, item.record->note, item.record->quantity.source});
        }
    };
    add("general");
    if (!rules.empty() && rules != "general") add(rules);
    return lines;
}

}  // namespace standin
