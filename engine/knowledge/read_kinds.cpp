// The kinds of food that somebody may have to be without.
#include "knowledge/fields.hpp"
#include "knowledge/read_each.hpp"

namespace standin {
namespace {

Kind kind_from(ObjectReader& r) {
    Kind k;
    k.id = r.text("id");
    k.takes = r.text("takes");
    k.note = r.text_or("note");
    k.source = r.text("source");
    k.names = r.texts("names");
    if (k.names.empty()) r.fault("names", "a kind needs at least one name");
    k.foods = r.texts("foods");
    k.but = r.texts("but");
    k.kinds = r.texts("kinds");
    k.plants = r.texts("plants");
    k.allergens = r.texts("allergens");
    k.families = r.texts("families");
    k.tissues = enumerated_list<Tissue>(r, "tissues");
    k.species = enumerated_list<Species>(r, "species");
    k.alcohol = r.flag("alcohol");
    k.untreated = r.flag("untreated");
    k.diet = r.flag("diet");
    return k;
}

}  // namespace

void read_kinds(const JsonNode& root, Problems& problems, KnowledgeFiles& into) {
    ObjectReader r(root, problems);
    r.text_or("note");
    read_each(r, "kinds", "kind", &Kind::id, kind_from, into.records.kinds, into);
    for (const auto& item : r.list("casings")) {
        ObjectReader c(item, problems);
        into.records.casings.push_back({c.texts("words"), c.texts("kinds"), c.text_or("note")});
    }
    for (const auto& item : r.list("refused")) {
        ObjectReader w(item, problems);
        into.records.refused.push_back({w.texts("names"), w.text("says")});
    }
}

}  // namespace standin
