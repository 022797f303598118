#include "knowledge/mending.hpp"

#include <algorithm>
#include <set>

#include "core/names.hpp"
#include "knowledge/fields.hpp"
#include "knowledge/reading.hpp"
#include "standin/property.hpp"

namespace standin {
namespace {

std::string known_property(ObjectReader& r) {
    std::string name = r.text("property");
    if (!property_of(name)) r.fault("property", "no property \"" + name + "\"");
    return name;
}

TasteReading read_reading(const JsonNode& item, Problems& problems) {
    ObjectReader r(item, problems);
    TasteReading reading;
    reading.says = r.text("says");
    reading.says_much = r.text_or("says_much");
    reading.beside = r.flag("beside");
    for (const auto& when : r.list("when")) {
        ObjectReader w(when, problems);
        reading.when.push_back({known_property(w), w.number_if("below"), w.number_if("above")});
    }
    for (const auto& move : r.list("moves")) {
        ObjectReader m(move, problems);
        const std::string kind = m.text("kind");
        if (kind != "add" && kind != "times") m.fault("kind", "\"kind\" must be add or times");
        reading.moves.push_back({known_property(m), kind == "times", m.number("by"), m.number_if("least"), m.number_if("most")});
    }
    if (r.has("more_of")) reading.more_of = enumerated<Role>(r, "more_of");
    if (r.has("less_of")) reading.less_of = enumerated<Role>(r, "less_of");
    reading.by = r.number_if("by").value_or(1);
    if ((reading.more_of && reading.by <= 1) || (reading.less_of && (reading.by <= 0 || reading.by >= 1)))
        r.fault("by", "more of a role is above 1, less of it between 0 and 1");
    reading.discard = r.flag("discard");
    return reading;
}

std::vector<MendStep> read_steps(ObjectReader& r, std::string_view key, Problems& problems) {
    std::vector<MendStep> steps;
    for (const auto& item : r.list(key, true)) {
        ObjectReader s(item, problems);
        MendStep step{s.text("id"), s.text("text"), s.text("source"), {}};
        if (s.has("worked")) step.worked = s.flag("worked");
        steps.push_back(std::move(step));
    }
    return steps;
}

Mending read_all(const JsonNode& root, Problems& problems) {
    ObjectReader r(root, problems);
    Mending all;
    for (const auto& item : r.list("tasted", true)) {
        ObjectReader t(item, problems);
        TasteWord word{t.text("id"), t.text_or("practice"), t.text("source"), t.texts("words"), t.texts("examples"), {}};
        for (const auto& reading : t.list("readings", true)) word.readings.push_back(read_reading(reading, problems));
        if (word.readings.empty()) t.fault("readings", "a tasted word needs at least one reading");
        all.tasted.push_back(std::move(word));
    }
    all.passed_over = r.texts("passed_over");
    all.stronger = r.texts("stronger");
    for (const auto& item : r.list("bring", true)) {
        ObjectReader b(item, problems);
        all.bring.push_back({b.text("id"), b.text("how"), b.text("source"), enumerated_list<Role>(b, "roles"),
                             enumerated_list<Tissue>(b, "tissues"), b.number_if("water").value_or(0)});
    }
    all.fold = read_steps(r, "fold", problems);
    all.plain = read_steps(r, "plain", problems);
    return all;
}

}  // namespace

void read_mending(const JsonNode& root, Problems& problems, KnowledgeFiles&) { read_all(root, problems); }

Result<Mending> mending_from(std::string_view text, const std::string& file) {
    const auto root = read_json(text, file);
    if (!root) return Failure(root.error());
    Problems problems(file);
    Mending all = read_all(*root, problems);
    if (!problems.empty()) return Failure(join(problems.errors()));
    return all;
}

std::vector<std::string> faults_in(const Mending& mending, const Records& records) {
    std::vector<std::string> faults;
    std::set<std::string> sources, ids, words;
    for (const auto& source : records.sources) sources.insert(source.id);
    const auto known = [&](const std::string& what, const std::string& source) {
        if (!sources.count(source.substr(0, source.find('#'))))
            faults.push_back(what + ": source \"" + source + "\" is not in sources.json");
    };
    const auto once = [&](std::set<std::string>& seen, const std::string& word) {
        if (!seen.insert(word).second) faults.push_back("this stands a second time: " + word);
    };
    for (const auto& word : mending.tasted) {
        known("tasted " + word.id, word.source);
        once(ids, "tasted " + word.id);
        for (const auto& said : word.words) once(words, fold(said));
    }
    for (const auto& way : mending.bring) {
        known("bring " + way.id, way.source);
        once(ids, "bring " + way.id);
    }
    for (const auto* steps : {&mending.fold, &mending.plain})
        for (const auto& step : *steps) {
            known("step " + step.id, step.source);
            once(ids, "step " + step.id);
        }
    return faults;
}

}  // namespace standin
