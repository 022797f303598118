#include <array>
#include <nlohmann/json.hpp>

#include "render/json/json_parts.hpp"
#include "standin/colour_names.hpp"

namespace standin::cli {
namespace {

Json line_json(const PredictedLine& line) {
    return {{"ingredient", line.ingredient},
            {"name", line.name},
            {"prepared", line.prepared},
            {"weighed_g", num(line.weighed_g)},
            {"grams", num(line.grams)},
            {"share", num(line.share)},
            {"roles", json_of(line.roles)},
            {"keep", line.keep},
            {"weighed_prepared", line.weighed_prepared},
            {"ready", line.ready},
            {"lying_g", num(line.lying_g)},
            {"written", line.written},
            {"spoons", line.spoons}};
}

Json colour_json(const PredictedColour& c) {
    return {{"L", num(c.lab.L)},
            {"a", num(c.lab.a)},
            {"b", num(c.lab.b)},
            {"hex", c.hex},
            {"word", c.word},
            {"flecks", c.flecks},
            {"said", array_of(said_of(c),
                              [](const SaidOfColour& s) {
                                  return Json{{"word", s.word}, {"share", num(s.share)}};
                              })},
            {"bands", {{"L", json_of(c.L)}, {"a", json_of(c.a)}, {"b", json_of(c.b)}}}};
}

Json from(const std::vector<Contribution>& parts, const Prediction& p) {
    return array_of(parts, [&](const Contribution& c) {
        const std::string ingredient = c.line < p.lines.size() ? p.lines[c.line].ingredient : std::string();
        return Json{{"line", c.line + 1}, {"ingredient", ingredient}, {"share", num(c.share)}};
    });
}

Json heat_chances(const Prediction& p) {
    constexpr std::array<const char*, 6> words{"none", "barely", "mild", "medium", "hot", "very hot"};
    Json out = Json::object();
    for (std::size_t i = 0; i < words.size(); ++i) out[words[i]] = num(p.heat_chances[i]);
    return out;
}

Json lethality_json(const std::optional<CookLethality>& l) {
    if (!l) return nullptr;
    return {{"measured", l->measured}, {"minutes", json_of(l->minutes)}, {"log_reductions", json_of(l->logs)}, {"table", l->table},
            {"says", l->says},         {"reason", json_of(l->reason)}};
}

}  // namespace

Json json_of(const Prediction& p) {
    return {{"title", p.title},
            {"batch_g", num(p.batch_g)},
            {"meat_g", num(p.meat_g)},
            {"lines", array_of(p.lines, [](const PredictedLine& l) { return line_json(l); })},
            {"properties", json_of(p.properties)},
            {"words", {{"heat", p.heat_word}, {"bind", p.bind_word}, {"colour", p.colour_word}}},
            {"heat_chances", heat_chances(p)},
            {"colour", {{"raw", colour_json(p.raw)}, {"rested", colour_json(p.rested)}, {"cooked", colour_json(p.cooked)}}},
            {"green_life",
             p.green_life
                 ? Json{{"hours", json_of(p.green_life->hours)}, {"says", p.green_life->says}, {"reason", json_of(p.green_life->reason)}}
                 : Json()},
            {"lethality", lethality_json(p.lethality)},
            {"aroma", p.aroma},
            {"from",
             {{"green", from(p.green_from, p)},
              {"heat", from(p.heat_from, p)},
              {"acid", from(p.acid_from, p)},
              {"salt", from(p.salt_from, p)},
              {"fat", from(p.fat_from, p)}}},
            {"allergens", json_of(p.allergens)},
            {"cautions", json_of(p.cautions)},
            {"core", json_of(p.core)},
            {"knowledge", p.overlay},
            {"label", p.label},
            {"read_as", in_full(p.read_as)},
            {"read_as_reasons", json_of(p.read_as)},
            {"notes", in_full(p.notes)},
            {"note_reasons", json_of(p.notes)}};
}

std::string predict_json(const Prediction& prediction, Form form, const Extras& beside) {
    Json page = json_of(prediction);
    page["draft"] = draft_json(beside);
    page["freezing"] = freezing_json(beside);
    page["cost"] = cost_json(beside.cost, prediction);
    return printed(page, form);
}

Json json_of(const DistanceParts& parts) {
    return {{"distance", num(parts.distance)},
            {"verdict", in_words(parts.nearness)},
            {"felt", num(parts.felt)},
            {"lost", num(parts.lost)},
            {"trusted", num(parts.trusted)},
            {"most", array_of(parts.most, [](const auto& part) {
                 return Json{{"what", part.first}, {"differences", num(part.second)}};
             })}};
}

std::string compare_json(const CompareAnswer& answer) {
    return printed({{"on_page", json_of(answer.on_page)},
                    {"formulas", array_of(answer.formulas, [](const Prediction& p) { return json_of(p); })},
                    {"from_first", array_of(answer.from_first, [](const Comparison& c) {
                         return Json{{"differences", json_of(c.differences)},
                                     {"colour_difference", {{"rested", json_of(c.colour_rested)}, {"cooked", json_of(c.colour_cooked)}}},
                                     {"apart", json_of(c.apart)}};
                     })}});
}

}  // namespace standin::cli
