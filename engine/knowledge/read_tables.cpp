// The small tables: sources, model parameters, perception, wants, allergens.
#include "knowledge/fields.hpp"
#include "knowledge/reading.hpp"

namespace standin {

void read_sources(const JsonNode& root, Problems& problems, KnowledgeFiles& into) {
    ObjectReader r(root, problems);
    for (const auto& item : r.list("sources", true)) {
        ObjectReader s(item, problems);
        into.records.sources.push_back({s.text("id"), enumerated<SourceKind>(s, "kind"), s.text("cite"), s.text_or("note")});
        into.places.try_emplace("source " + into.records.sources.back().id, describe(problems.file(), item.place));
    }
}

void read_parameters(const JsonNode& root, Problems& problems, KnowledgeFiles& into) {
    ObjectReader r(root, problems);
    const std::string model = r.text("model");
    r.text_or("note");
    for (const auto& item : r.list("parameters", true)) {
        ObjectReader p(item, problems);
        Parameter parameter;
        parameter.id = p.text("id");
        parameter.note = p.text_or("note");
        parameter.quantity = read_quantity(p, {});
        if (parameter.id.rfind(model + ".", 0) != 0) p.fault("id", "the id of a constant of this model starts with \"" + model + ".\"");
        into.places.try_emplace("parameter " + parameter.id, describe(problems.file(), item.place));
        into.records.parameters.push_back(std::move(parameter));
    }
}

void read_perception(const JsonNode& root, Problems& problems, KnowledgeFiles& into) {
    ObjectReader r(root, problems);
    r.text_or("note");
    for (const auto& item : r.list("differences", true)) {
        ObjectReader d(item, problems);
        Difference difference;
        difference.property = d.text("property");
        difference.note = d.text_or("note");
        const std::string kind = d.text("kind");
        if (kind != "relative" && kind != "absolute") d.fault("kind", "\"kind\" must be relative or absolute");
        difference.relative = kind == "relative";
        difference.step = read_quantity(d, {});
        if (!(difference.step.band.low > 0)) d.fault("value", "a noticeable difference must be above zero");
        into.places.try_emplace("difference " + difference.property, describe(problems.file(), item.place));
        into.records.perception.push_back(std::move(difference));
    }
}

void read_wants(const JsonNode& root, Problems& problems, KnowledgeFiles& into) {
    ObjectReader r(root, problems);
    r.text_or("note");
    for (const auto& item : r.list("wants", true)) {
        ObjectReader w(item, problems);
        WantRecord want{w.text("word"), w.text_or("note"), w.text("source"), {}, w.texts("also")};
        for (const auto& move : w.list("moves", true)) {
            ObjectReader m(move, problems);
            const std::string kind = m.text("kind");
            if (kind != "add" && kind != "times") m.fault("kind", "\"kind\" must be add or times");
            want.moves.push_back({m.text("property"), kind == "times", m.number("by"), m.number_if("least"), m.number_if("most")});
        }
        into.places.try_emplace("want " + want.word, describe(problems.file(), item.place));
        into.records.wants.push_back(std::move(want));
    }
}

void read_allergens(const JsonNode& root, Problems& problems, KnowledgeFiles& into) {
    ObjectReader r(root, problems);
    r.text_or("note");
    for (const auto& item : r.list("allergens", true)) {
        ObjectReader a(item, problems);
        Allergen allergen{a.text("id"), a.text("name"), a.texts("words")};
        if (allergen.words.empty()) a.fault("words", "an allergen needs at least one word that says it");
        into.places.try_emplace("allergen " + allergen.id, describe(problems.file(), item.place));
        into.records.allergens.push_back(std::move(allergen));
    }
}

}  // namespace standin
