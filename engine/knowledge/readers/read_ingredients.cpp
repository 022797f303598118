#include "knowledge/readers/fields.hpp"
#include "knowledge/readers/reading.hpp"

namespace standin {
namespace {

Composition composition_of(const JsonNode& node, Problems& problems) {
    ObjectReader r(node, problems);
    Composition c;
    c.source = r.text("source");
    c.water = r.band("water_g");
    c.protein = r.band("protein_g");
    c.fat = r.band("fat_g");
    c.carbohydrate = r.band("carbohydrate_g");
    c.ash = r.band("ash_g");
    c.fibre = r.band_if("fibre_g");
    c.sugars = r.band_if("sugars_g");
    c.sodium_mg = r.band_if("sodium_mg");
    c.potassium_mg = r.band_if("potassium_mg");
    c.alcohol = r.band_if("alcohol_g").value_or(Band{});
    c.acid = r.band_if("acid_g").value_or(Band{});
    c.salt = r.band_if("salt_g").value_or(Band{});
    c.stand_in = r.text_or("stand_in");
    c.exception = r.text_or("exception");
    for (const auto* part : {&c.water, &c.protein, &c.fat, &c.carbohydrate, &c.ash, &c.alcohol, &c.acid, &c.salt})
        if (part->low < 0 || part->high > 100) r.fault("source", "a part of 100 g must lie from 0 to 100 g");
    for (const auto* part : {&c.fibre, &c.sugars, &c.sodium_mg, &c.potassium_mg})
        if (*part && (*part)->low < 0) r.fault("source", "a part of 100 g cannot be negative");
    return c;
}

Acidity acidity_of(const JsonNode& node, Problems& problems) {
    ObjectReader r(node, problems);
    Acidity a;
    a.ph = quantity_if(r, "ph", {"pH"});
    a.titratable = quantity_if(r, "titratable",
                               {"mmol/kg", "g/kg acetic", "g/kg lactic", "g/kg citric", "g/kg malic", "g/kg tartaric", "g/kg oxalic"});
    a.buffer = quantity_if(r, "buffer", {"mmol/(pH kg)"});
    if (const JsonNode* shares = r.child("acids", JsonNode::Kind::object))
        for (const auto& [name, share] : shares->members) {
            if (share.kind != JsonNode::Kind::number || share.number < 0)
                problems.add(share.place, "the share of an acid must be a number from 0 to 1");
            a.acids.push_back({parse<Acid>(name, share.place, problems), share.number});
        }
    if (a.titratable && (a.acids.empty() || !a.ph)) r.fault("titratable", "titratable acid needs \"acids\" and \"ph\" beside it");
    return a;
}

MeatRecord meat_of(const JsonNode& node, Problems& problems) {
    ObjectReader r(node, problems);
    MeatRecord m;
    m.species = enumerated<Species>(r, "species");
    m.buffer_scale = quantity_if(r, "buffer_scale", {"1"}).value_or(Quantity{});
    m.bind = quantity_if(r, "bind", {"1"}).value_or(Quantity{});
    return m;
}

BindingRecord binding_of(const JsonNode& node, Problems& problems) {
    ObjectReader r(node, problems);
    BindingRecord b{quantity_if(r, "water", {"g/g"}).value_or(Quantity{}), quantity_if(r, "fat", {"g/g"}).value_or(Quantity{}),
                    r.text("sets"), r.text_or("gel"), quantity_if(r, "swells", {"1"})};
    if (!b.gel.empty() && b.gel != "made" && b.gel != "sets") r.fault("gel", "\"gel\" must be made or sets");
    if (b.sets != "cold" && b.sets != "hot" && b.sets != "chilled" && b.sets != "never")
        r.fault("sets", "\"sets\" must be cold, hot, chilled or never");
    return b;
}

TintRecord tint_of(const JsonNode& node, Problems& problems) {
    ObjectReader r(node, problems);
    TintRecord tint{r.number("red"), r.number("green"), r.number("blue"), r.number_if("fades").value_or(0), {}, r.text("source")};
    if (const JsonNode* c = r.child("cooked", JsonNode::Kind::object)) {
        ObjectReader cooked(*c, problems);
        tint.cooked = TintBands{cooked.number("red"), cooked.number("green"), cooked.number("blue")};
    }
    return tint;
}

std::vector<MeasureRecord> measures_of(ObjectReader& r) {
    std::vector<MeasureRecord> all;
    for (const auto& item : r.list("measures")) {
        ObjectReader m(item, r.problems());
        all.push_back({m.text("measure"), m.text_or("note"), m.band("grams"), m.text("source")});
        if (all.back().grams.low <= 0) m.fault("grams", "a measure must weigh something");
    }
    return all;
}

std::vector<AromaShare> aroma_of(ObjectReader& r) {
    std::vector<AromaShare> all;
    const JsonNode* node = r.child("aroma", JsonNode::Kind::object);
    if (!node) return all;
    for (const auto& [name, value] : node->members) {
        if (value.kind != JsonNode::Kind::number || value.number < 0 || value.number > 5)
            r.problems().add(value.place, "an aroma intensity is a number from 0 to 5");
        all.push_back({parse<AromaNote>(name, value.place, r.problems()), value.number});
    }
    return all;
}

std::vector<int> season_of(ObjectReader& r) {
    std::vector<int> all;
    for (const auto& item : r.list("season")) {
        if (item.kind != JsonNode::Kind::number || item.number < 1 || item.number > 12 || item.number != static_cast<int>(item.number))
            r.problems().add(item.place, "a month is a whole number from 1 to 12");
        all.push_back(static_cast<int>(item.number));
    }
    return all;
}

void read_numbers(ObjectReader& r, Ingredient& i) {
    i.chlorophyll = quantity_if(r, "chlorophyll", {"mg/kg"});
    i.capsaicinoids = quantity_if(r, "capsaicinoids", {"mg/kg"});
    i.lutein = quantity_if(r, "lutein", {"mg/kg"});
    i.pungency = quantity_if(r, "pungency", {"mg/kg"});
    i.pod_sigma = quantity_if(r, "pod_sigma", {"ln"});
    i.lot_sigma = quantity_if(r, "lot_sigma", {"ln"});
    i.strength = quantity_if(r, "strength", {"g fresh/g"});
    i.edible = quantity_if(r, "edible", {"%"});
    i.sulphites = quantity_if(r, "sulphites", {"mg/kg"});
    i.most_g_per_kg = quantity_if(r, "most_g_per_kg", {"g/kg"});
    if (i.most_g_per_kg && !(i.most_g_per_kg->band.low > 0 && i.most_g_per_kg->band.high <= 1000))
        r.fault("most_g_per_kg", "the most of a food in a kilo of batch lies above 0 and up to 1000 g/kg");
    for (const auto* q : {&i.chlorophyll, &i.lutein, &i.capsaicinoids, &i.pungency, &i.strength, &i.edible, &i.sulphites})
        if (*q && (*q)->band.low < 0) r.problems().add(r.place(), "\"" + i.id + "\": a quantity of food cannot be negative");
}

Ingredient ingredient_of(const JsonNode& node, const std::string& family, Problems& problems) {
    ObjectReader r(node, problems);
    Ingredient i;
    i.family = family;
    i.id = r.text("id");
    i.names = r.texts("names");
    if (i.names.empty()) r.fault("names", "an ingredient needs at least one name");
    i.generic = r.texts("generic");
    i.already = r.texts("already");
    i.ready_by = r.text_or("ready_by");
    i.latin = r.text_or("latin");
    i.note = r.text_or("note");
    i.made_of = r.text_or("made_of");
    i.apart = r.text_or("apart");
    i.storage = r.text_or("storage");
    i.roles = enumerated_list<Role>(r, "roles");
    if (i.roles.empty()) r.fault("roles", "an ingredient needs at least one role");
    i.tissue = enumerated<Tissue>(r, "tissue");
    if (const JsonNode* c = r.child("composition", JsonNode::Kind::object, true)) i.composition = composition_of(*c, problems);
    read_numbers(r, i);
    if (const JsonNode* c = r.child("acidity", JsonNode::Kind::object)) i.acidity = acidity_of(*c, problems);
    if (const JsonNode* c = r.child("meat", JsonNode::Kind::object)) i.meat = meat_of(*c, problems);
    if (const JsonNode* c = r.child("binding", JsonNode::Kind::object)) i.binding = binding_of(*c, problems);
    if (const JsonNode* c = r.child("tint", JsonNode::Kind::object)) i.tint = tint_of(*c, problems);
    i.measures = measures_of(r);
    i.aroma = aroma_of(r);
    i.season = season_of(r);
    i.allergens = r.texts("allergens");
    i.may_hold = r.texts("may_hold");
    i.cautions = r.texts("cautions");
    i.label = r.texts("label");
    i.kinds = r.texts("kinds");
    i.free_of = r.texts("free_of");
    return i;
}

}  // namespace

void read_ingredients(const JsonNode& root, Problems& problems, KnowledgeFiles& into) {
    ObjectReader r(root, problems);
    const std::string family = r.text("family");
    r.text_or("note");
    for (const auto& item : r.list("ingredients", true)) {
        into.records.ingredients.push_back(ingredient_of(item, family, problems));
        into.places.try_emplace("ingredient " + into.records.ingredients.back().id, describe(problems.file(), item.place));
    }
}

}  // namespace standin
