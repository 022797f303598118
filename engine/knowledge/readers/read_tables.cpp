// The small tables: sources, model parameters, perception, wants, allergens.
#include "knowledge/readers/fields.hpp"
#include "knowledge/readers/read_each.hpp"

namespace standin {
namespace {

SourceRecord source_of(ObjectReader& r) { return {r.text("id"), enumerated<SourceKind>(r, "kind"), r.text("cite"), r.text_or("note")}; }

Parameter parameter_of(ObjectReader& r, const std::string& model) {
    Parameter parameter;
    parameter.id = r.text("id");
    parameter.note = r.text_or("note");
    parameter.quantity = read_quantity(r, {});
    if (parameter.id.rfind(model + ".", 0) != 0) r.fault("id", "the id of a constant of this model starts with \"" + model + ".\"");
    return parameter;
}

// Which of two words stands under "kind".
bool is_first_kind(ObjectReader& r, const char* first, const char* second) {
    const std::string kind = r.text("kind");
    if (kind != first && kind != second) r.fault("kind", std::string("\"kind\" must be ") + first + " or " + second);
    return kind == first;
}

Difference difference_of(ObjectReader& r) {
    Difference difference;
    difference.property = r.text("property");
    difference.note = r.text_or("note");
    difference.relative = is_first_kind(r, "relative", "absolute");
    difference.step = read_quantity(r, {});
    if (!(difference.step.band.low > 0)) r.fault("value", "a noticeable difference must be above zero");
    return difference;
}

WantRecord want_of(ObjectReader& r) {
    WantRecord want{r.text("word"), r.text_or("note"), r.text("source"), {}, r.texts("also")};
    for (const auto& move : r.list("moves", true)) {
        ObjectReader m(move, r.problems());
        const bool added = is_first_kind(m, "add", "times");
        want.moves.push_back({m.text("property"), !added, m.number("by"), m.number_if("least"), m.number_if("most")});
    }
    return want;
}

Allergen allergen_of(ObjectReader& r) {
    Allergen allergen{r.text("id"), r.text("name"), r.texts("words")};
    if (allergen.words.empty()) r.fault("words", "an allergen needs at least one word that says it");
    return allergen;
}

}  // namespace

void read_sources(const JsonNode& root, Problems& problems, KnowledgeFiles& into) {
    ObjectReader r(root, problems);
    read_each(r, "sources", "source", &SourceRecord::id, source_of, into.records.sources, into);
}

void read_parameters(const JsonNode& root, Problems& problems, KnowledgeFiles& into) {
    ObjectReader r(root, problems);
    const std::string model = r.text("model");
    r.text_or("note");
    const auto one = [&](ObjectReader& p) { return parameter_of(p, model); };
    read_each(r, "parameters", "parameter", &Parameter::id, one, into.records.parameters, into);
}

void read_perception(const JsonNode& root, Problems& problems, KnowledgeFiles& into) {
    ObjectReader r(root, problems);
    r.text_or("note");
    read_each(r, "differences", "difference", &Difference::property, difference_of, into.records.perception, into);
}

void read_wants(const JsonNode& root, Problems& problems, KnowledgeFiles& into) {
    ObjectReader r(root, problems);
    r.text_or("note");
    read_each(r, "wants", "want", &WantRecord::word, want_of, into.records.wants, into);
}

void read_allergens(const JsonNode& root, Problems& problems, KnowledgeFiles& into) {
    ObjectReader r(root, problems);
    r.text_or("note");
    read_each(r, "allergens", "allergen", &Allergen::id, allergen_of, into.records.allergens, into);
}

}  // namespace standin
