#include "knowledge/readers/fields.hpp"
#include "knowledge/readers/read_each.hpp"
#include "knowledge/records/references.hpp"

namespace standin {

std::string swap_key(const Swap& swap) {
    std::string key = "swap " + std::string(spelling(swap.role)) + (swap.any() ? " any" : " " + swap.from + " > " + swap.to);
    for (const auto& step : swap.prepared) key += ", " + step;
    if (swap.partner) key += ", with " + swap.partner->ingredient;
    return key;
}

namespace {

// Without a weight the partner of a chile brings the rest of the heat.
std::optional<SwapPartner> partner_of(ObjectReader& swap, Role role) {
    const JsonNode* child = swap.child("partner", JsonNode::Kind::object);
    if (!child) return std::nullopt;
    ObjectReader r(*child, swap.problems());
    SwapPartner partner;
    partner.ingredient = r.text("ingredient");
    partner.prepared = r.texts("prepared");
    partner.why = r.text("why");
    if (auto ratio = quantity_if(r, "ratio", {"g/g"})) partner.ratio = *ratio;
    const bool by_heat = role == Role::heat && !r.has("ratio");
    if (!by_heat && !(partner.ratio.band.low > 0)) r.fault("ratio", "a partner needs its grams for a gram of what is replaced");
    return partner;
}

Swap swap_of(ObjectReader& r, Role role) {
    Swap s;
    s.role = role;
    s.from = r.text("from");
    s.to = r.text("to");
    s.prepared = r.texts("prepared");
    s.needs = r.texts("needs");
    s.basis = enumerated<Basis>(r, "basis");
    s.ratio = quantity_if(r, "ratio", {"g/g"});
    s.partner = partner_of(r, role);
    s.closeness = r.number("closeness");
    s.most_share = r.number_if("most_share").value_or(1);
    s.trade = r.flag("trade");
    s.derived = r.flag("derived");
    s.note = r.text_or("note");
    s.source = r.text("source");
    if (r.has("closeness") && !(s.closeness > 0 && s.closeness <= 1)) r.fault("closeness", "closeness must lie in (0, 1]");
    if (!(s.most_share > 0 && s.most_share <= 1)) r.fault("most_share", "most_share must lie in (0, 1]");
    if (s.ratio && !(s.ratio->band.low > 0)) r.fault("ratio", "a ratio of weights must be above zero");
    return s;
}

Swap any_of(ObjectReader r, Role role) {
    Swap s;
    s.role = role;
    s.closeness = r.number("closeness");
    s.note = r.text("note");
    s.source = r.text("source");
    if (!(s.closeness > 0 && s.closeness <= 1)) r.fault("closeness", "closeness must lie in (0, 1]");
    return s;
}

Swap returned(const Swap& swap) {
    Swap back = swap;
    std::swap(back.from, back.to);
    back.note.clear();  // it describes the stand-in
    back.returned = true;
    back.most_share = 1;  // it is the stand-in that is strong
    if (back.ratio && swap.ratio->band.low > 0)
        back.ratio->band = {1 / swap.ratio->band.high, 1 / swap.ratio->band.mid, 1 / swap.ratio->band.low};
    return back;
}

Condition condition_of(ObjectReader& c) {
    Condition condition;
    condition.id = c.text("id");
    condition.says = c.text("says");
    condition.source = c.text("source");
    condition.note = c.text_or("note");
    condition.preparation = c.text_or("preparation");
    if (c.has("process")) condition.process = enumerated<ProcessField>(c, "process");
    condition.least = c.number_if("least");
    condition.most = c.number_if("most");
    if (condition.process.has_value() != (condition.least || condition.most))
        c.fault("process", "a condition on the process needs \"process\" and a \"least\" or a \"most\"");
    return condition;
}

}  // namespace

void read_swaps(const JsonNode& root, Problems& problems, KnowledgeFiles& into) {
    ObjectReader r(root, problems);
    const Role role = enumerated<Role>(r, "role");
    r.text_or("note");
    if (const JsonNode* any = r.child("any", JsonNode::Kind::object)) {
        const Swap swap = any_of(ObjectReader(*any, problems), role);
        if (!into.places.try_emplace(swap_key(swap), describe(problems.file(), any->place)).second)
            r.fault("any", "this stands here a second time: " + swap_key(swap));
        into.records.swaps.push_back(swap);
    }
    for (const auto& item : r.list("swaps", true)) {
        ObjectReader one(item, problems);
        const bool both_ways = one.flag("both_ways");
        const Swap swap = swap_of(one, role);
        if (both_ways && swap.partner) one.fault("both_ways", "a stand-in in two parts has no way back");
        if (both_ways && !swap.prepared.empty())
            one.fault("both_ways", "a prepared stand-in has no way back: write the return edge by itself");
        std::vector<Swap> edges{swap};
        if (both_ways) edges.push_back(returned(swap));
        for (auto& edge : edges) {
            if (!into.places.try_emplace(swap_key(edge), describe(problems.file(), item.place)).second)
                one.fault("from", "this swap stands here a second time: " + swap_key(edge));
            into.records.swaps.push_back(std::move(edge));
        }
    }
}

void read_conditions(const JsonNode& root, Problems& problems, KnowledgeFiles& into) {
    ObjectReader r(root, problems);
    r.text_or("note");
    read_each(r, "conditions", "condition", &Condition::id, condition_of, into.records.conditions, into);
}

}  // namespace standin
