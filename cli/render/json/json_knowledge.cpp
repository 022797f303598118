#include <nlohmann/json.hpp>

#include "render/json/json_parts.hpp"

namespace standin::cli {
namespace {

// Facts by what they are of. A second fact of the same thing gets a number behind it, so that none is lost.
Json by_name(const std::vector<Fact>& facts) {
    Json out = Json::object();
    for (const auto& f : facts) {
        std::string key = f.what;
        for (int n = 2; out.contains(key); ++n) key = f.what + " " + std::to_string(n);
        out[key] = {{"value", num(f.value.mid)},
                    {"low", num(f.value.low)},
                    {"high", num(f.value.high)},
                    {"unit", f.unit},
                    {"source", f.source},
                    {"cite", f.cite},
                    {"kind", f.kind}};
    }
    return out;
}

Json swap_json(const SwapFact& s) {
    return {{"role", std::string(word(s.role))},
            {"from", s.from},
            {"to", s.to},
            {"basis", s.basis},
            {"closeness", num(s.closeness)},
            {"prepared", s.prepared},
            {"needs", s.needs},
            {"note", s.note},
            {"source", s.source}};
}

Json ingredient_json(const IngredientFacts& i) {
    Json aroma = Json::object();
    for (const auto& [note, strength] : i.aroma) aroma[note] = num(strength);
    const auto swap = [](const SwapFact& s) { return swap_json(s); };
    return {{"id", i.id},
            {"names", i.names},
            {"roles", json_of(i.roles)},
            {"family", i.family},
            {"latin", i.latin},
            {"composition", by_name(i.composition)},
            {"doses", by_name(i.doses)},
            {"measures", by_name(i.measures)},
            {"aroma", aroma},
            {"season", i.season},
            {"storage", i.storage},
            {"stand_in", i.stand_in},
            {"note", i.note},
            {"swaps_out", array_of(i.swaps_out, swap)},
            {"swaps_in", array_of(i.swaps_in, swap)},
            {"allergens", i.allergens},
            {"may_hold", i.may_hold},
            {"cautions", json_of(i.cautions)},
            {"sources", array_of(i.sources, [](const auto& s) {
                 return Json{{"id", s.first}, {"cite", s.second}};
             })}};
}

Json error_json(const Error& e) { return {{"message", e.message}, {"where", e.where}, {"hints", e.hints}}; }

Json warning_json(const CheckWarning& w) {
    return {{"kind", w.kind}, {"says", w.says}, {"about", w.about}, {"message", w.message}, {"where", w.where}, {"hints", w.hints}};
}

// `from` is a Coverage or the counts of all groups.
template <class Counts>
Json by_kind(const Counts& from) {
    return {{"published", from.published},
            {"common-practice", from.common_practice},
            {"from-memory", from.from_memory},
            {"judgement", from.judgement}};
}

}  // namespace

std::string lookup_json(const LookupAnswer& answer) {
    return printed({{"matches", array_of(answer.matches, [](const IngredientFacts& i) { return ingredient_json(i); })},
                    {"nearest", answer.nearest},
                    {"refused", answer.refused},
                    {"read_as", answer.read_as},
                    {"question", answer.question}});
}

std::string graph_json(const std::string& dot) { return printed({{"dot", dot}}); }

std::string check_json(const CheckAnswer& answer) {
    const auto error = [](const Error& e) { return error_json(e); };
    Json out{{"files", array_of(answer.files, [&](const FileCheck& f) {
                  return Json{{"file", f.file},
                              {"kind", f.kind},
                              {"ok", f.ok},
                              {"laid_over", f.laid_over},
                              {"errors", array_of(f.errors, error)},
                              {"warnings", array_of(f.warnings, [](const CheckWarning& w) { return warning_json(w); })}};
              })}};
    if (const auto& c = answer.counts) {
        out["counts"] = {{"ingredients", c->ingredients},     {"names", c->names}, {"preparations", c->preparations}, {"swaps", c->swaps},
                         {"derived_swaps", c->derived_swaps}, {"rules", c->rules}};
        out["by_source_kind"] = by_kind(*c);
        for (const auto& group : answer.coverage) out["coverage"][group.group] = by_kind(group);
        for (const auto& group : answer.by_role) out["coverage_by_role"][group.group] = by_kind(group);
    }
    return printed(out);
}

}  // namespace standin::cli
