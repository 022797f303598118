#include "knowledge/readers/mending.hpp"

#include <algorithm>
#include <set>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "knowledge/readers/fields.hpp"
#include "knowledge/readers/reading.hpp"
#include "standin/property.hpp"

namespace standin {
namespace {

std::string known_property(ObjectReader& r) {
    std::string name = r.text("property");
    if (!property_of(name)) r.fault("property", "no property \"" + name + "\"");
    return name;
}

std::vector<TasteWhen> read_when(ObjectReader& r, Problems& problems) {
    std::vector<TasteWhen> all;
    for (const auto& when : r.list("when")) {
        ObjectReader w(when, problems);
        all.push_back({known_property(w), w.number_if("below"), w.number_if("above")});
    }
    return all;
}

CauseOfTaste read_cause(const JsonNode& item, Problems& problems) {
    ObjectReader r(item, problems);
    CauseOfTaste cause;
    cause.id = r.text("id");
    cause.of = r.texts("of");
    cause.unless = r.texts("unless");
    cause.orders = r.texts("orders");
    cause.says = r.text("says");
    cause.first = r.text_or("first");
    cause.does = r.text("does");
    cause.source = r.text("source");
    for (const auto& when : r.list("process")) {
        ObjectReader w(when, problems);
        MakingWhen one{w.text("field"), w.number_if("below"), w.number_if("above"), w.flag("unsaid")};
        if (std::find(making_fields.begin(), making_fields.end(), one.field) == making_fields.end())
            w.fault("field", "no field of the process \"" + one.field + "\"");
        cause.process.push_back(std::move(one));
    }
    cause.when = read_when(r, problems);
    cause.roles = enumerated_list<Role>(r, "roles");
    cause.share_above = r.number_if("share_above");
    cause.protease_above = r.number_if("protease_above");
    if (r.has("note")) cause.note = enumerated<AromaNote>(r, "note");
    cause.acids = r.flag("acids");
    cause.unsqueezed = r.flag("unsqueezed");
    cause.poured = r.flag("poured");
    if (r.has("fish")) cause.fish = r.flag("fish");
    cause.costs = r.text_or("costs");
    if (!cause.costs.empty() && !contains(bind_costs, cause.costs)) r.fault("costs", "no factor of the bind \"" + cause.costs + "\"");
    cause.greener = r.text_or("greener");
    if (!cause.greener.empty() && !contains(green_costs, cause.greener))
        r.fault("greener", "nothing that greens is \"" + cause.greener + "\"");
    cause.spare_c = r.number_if("spare_c").value_or(0);
    cause.ends = r.flag("ends");
    cause.beside = r.texts("beside");
    cause.step_only = r.flag("step_only");
    cause.weighed = r.flag("weighed");
    cause.instead = r.flag("instead");
    cause.plain_first = r.flag("plain_first");
    cause.set = r.flag("set");
    return cause;
}

TasteReading read_reading(const JsonNode& item, Problems& problems) {
    ObjectReader r(item, problems);
    TasteReading reading;
    reading.says = r.text("says");
    reading.says_much = r.text_or("says_much");
    reading.says_little = r.text_or("says_little");
    reading.beside = r.flag("beside");
    reading.when = read_when(r, problems);
    for (const auto& move : r.list("moves")) {
        ObjectReader m(move, problems);
        const std::string kind = m.text("kind");
        if (kind != "add" && kind != "times") m.fault("kind", "\"kind\" must be add or times");
        reading.moves.push_back({known_property(m), kind == "times", m.number("by"), m.number_if("least"), m.number_if("most")});
    }
    if (r.has("more_of")) reading.more_of = enumerated<Role>(r, "more_of");
    if (r.has("less_of")) reading.less_of = enumerated<Role>(r, "less_of");
    if (r.has("less_note")) reading.less_note = enumerated<AromaNote>(r, "less_note");
    reading.less_kind = r.text_or("less_kind");
    reading.by = r.number_if("by").value_or(1);
    if ((reading.more_of && reading.by <= 1) || (reading.asks_less() && (reading.by <= 0 || reading.by >= 1)))
        r.fault("by", "more of a role is above 1, less of it between 0 and 1");
    reading.much = r.number_if("much").value_or(reading.much);
    reading.little = r.number_if("little").value_or(reading.little);
    reading.fat = r.number_if("fat").value_or(0);
    reading.plain = r.number_if("plain").value_or(0);
    reading.fish = r.flag("fish");
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
        TasteWord word{t.text("id"), t.text_or("practice"), t.text("source"), t.texts("words"), t.texts("examples"),
                       {},           t.flag("loose_water")};
        for (const auto& reading : t.list("readings", true)) word.readings.push_back(read_reading(reading, problems));
        if (word.readings.empty()) t.fault("readings", "a tasted word needs at least one reading");
        all.tasted.push_back(std::move(word));
    }
    all.passed_over = r.texts("passed_over");
    all.stronger = r.texts("stronger");
    all.weaker = r.texts("weaker");
    const std::string as_little = r.text_or("as_little");
    for (auto& word : all.tasted)
        for (auto& reading : word.readings)
            if (reading.says_little.empty() && (!reading.moves.empty() || reading.more_of || reading.asks_less()))
                reading.says_little = reading.says + as_little;
    for (const auto& item : r.list("bring", true)) {
        ObjectReader b(item, problems);
        all.bring.push_back({b.text("id"), b.text("how"), b.text("source"), enumerated_list<Role>(b, "roles"),
                             enumerated_list<Tissue>(b, "tissues"), b.number_if("water").value_or(0), b.flag("wet"),
                             b.number_if("round").value_or(0)});
    }
    for (const auto& item : r.list("causes", true)) all.causes.push_back(read_cause(item, problems));
    all.fold = read_steps(r, "fold", problems);
    all.plain = read_steps(r, "plain", problems);
    all.sweet = r.text_or("sweet");
    all.dish = r.text_or("dish");
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
        for (const auto& reading : word.readings) {
            const auto& all = records.kinds;
            if (!reading.less_kind.empty() &&
                std::none_of(all.begin(), all.end(), [&](const auto& k) { return k.id == reading.less_kind; }))
                faults.push_back("tasted " + word.id + ": no kind of food \"" + reading.less_kind + "\"");
        }
    }
    for (const auto& way : mending.bring) {
        known("bring " + way.id, way.source);
        once(ids, "bring " + way.id);
    }
    for (const auto& cause : mending.causes) {
        known("cause " + cause.id, cause.source);
        once(ids, "cause " + cause.id);
        for (const auto& of : cause.of)
            if (!ids.count("tasted " + of)) faults.push_back("cause " + cause.id + ": no tasted word \"" + of + "\"");
        for (const auto& other : cause.unless)
            if (!ids.count("cause " + other)) faults.push_back("cause " + cause.id + ": no cause before it \"" + other + "\"");
    }
    for (const auto* steps : {&mending.fold, &mending.plain})
        for (const auto& step : *steps) {
            known("step " + step.id, step.source);
            once(ids, "step " + step.id);
        }
    return faults;
}

}  // namespace standin
