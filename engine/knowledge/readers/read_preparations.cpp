#include "knowledge/readers/fields.hpp"
#include "knowledge/readers/read_each.hpp"

namespace standin {
namespace {

std::vector<Point> points_of(const JsonNode& list, Problems& problems) {
    std::vector<Point> all;
    if (list.kind != JsonNode::Kind::list || list.items.empty()) {
        problems.add(list.place, "expected a list of points {\"minutes\"?, \"value\", \"low\"?, \"high\"?}");
        return all;
    }
    for (const auto& item : list.items) {
        ObjectReader p(item, problems);
        const auto minutes = p.number_if("minutes");
        all.push_back({minutes, read_band(p)});
        if (all.back().value.low < 0) p.fault("value", "a share or yield cannot be negative");
        if (all.size() > 1 && (!minutes || !all[all.size() - 2].minutes || *minutes <= *all[all.size() - 2].minutes))
            p.fault("minutes", "several points need rising minutes");
    }
    return all;
}

std::vector<Tissue> tissues_of(ObjectReader& r) {
    std::vector<Tissue> all;
    for (const auto& item : r.list("tissues", true)) {
        if (item.kind != JsonNode::Kind::text) r.problems().add(item.place, "expected a word");
        else if (item.text != "*") all.push_back(parse<Tissue>(item.text, item.place, r.problems()));
    }
    return all;
}

PreparationEffect effect_of(const JsonNode& node, Problems& problems) {
    ObjectReader r(node, problems);
    PreparationEffect e;
    e.tissues = tissues_of(r);
    e.water_left = r.band_if("water_left");
    if (const JsonNode* yield = r.child("yield", JsonNode::Kind::list, !e.water_left)) e.yield = points_of(*yield, problems);
    if (e.water_left && !e.yield.empty()) r.fault("yield", "\"yield\" and \"water_left\" exclude each other");
    if (e.water_left && (e.water_left->low < 0 || e.water_left->high >= 1))
        r.fault("water_left", "a share of water lies from 0 to below 1");
    if (const JsonNode* kept = r.child("kept", JsonNode::Kind::object))
        for (const auto& [name, points] : kept->members)
            e.kept.push_back({parse<Kept>(name, points.place, problems), points_of(points, problems)});
    e.adds_salt = r.number_if("adds_salt").value_or(0);
    e.adds_acetic_mmol = r.number_if("adds_acetic_mmol").value_or(0);
    e.source = r.text("source");
    e.note = r.text_or("note");
    return e;
}

Preparation preparation_of(ObjectReader& r) {
    Preparation p;
    p.id = r.text("id");
    p.names = r.texts("names");
    p.instruction = r.text_or("instruction");
    p.verb = r.text_or("verb");
    p.why = r.text_or("why");
    p.note = r.text_or("note");
    p.order = static_cast<int>(r.number("order"));
    p.minutes = r.number_if("minutes");
    p.temperature_c = r.number_if("temperature_c");
    p.denatures = r.flag("denatures");
    for (const auto& item : r.list("effects", true)) p.effects.push_back(effect_of(item, r.problems()));
    return p;
}

}  // namespace

void read_preparations(const JsonNode& root, Problems& problems, KnowledgeFiles& into) {
    ObjectReader r(root, problems);
    r.text_or("note");
    read_each(r, "preparations", "preparation", &Preparation::id, preparation_of, into.records.preparations, into);
}

}  // namespace standin
