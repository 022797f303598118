#include "render/json/json_parts.hpp"

#include <nlohmann/json.hpp>

#include "standin/number_text.hpp"

namespace standin::cli {

Json num(double value) {
    constexpr int enough = 6;  // figures
    const auto rounded = number_in(figures_text(value, enough));
    return rounded ? Json(*rounded) : Json();
}

Json json_of(const Band& band) { return {{"low", num(band.low)}, {"mid", num(band.mid)}, {"high", num(band.high)}}; }

Json json_of(const std::vector<CautionText>& cautions) {
    return array_of(cautions, [](const CautionText& c) {
        return Json{{"id", c.id},         {"text", c.text},   {"brief", c.brief},
                    {"source", c.source}, {"foods", c.foods}, {"reason", json_of(c.reason)}};
    });
}

Json json_of(const Reason& r) {
    const Json figures = array_of(r.figures, [](const Figure& f) {
        Json json{{"what", f.what}, {"before", f.before ? num(*f.before) : Json()}, {"after", num(f.after)}, {"unit", f.unit}};
        if (f.low) json["low"] = num(*f.low);
        if (f.high) json["high"] = num(*f.high);
        return json;
    });
    return {{"kind", std::string(word(r.kind))},
            {"about", r.about},
            {"role", r.role},
            {"foods", r.foods},
            {"figures", figures},
            {"asks", r.asks},
            {"note", in_units(r.note, Units::metric)},
            {"by_way", r.by_way},
            {"says", in_full(r)}};
}

Json json_of(const std::vector<Presumption>& presumed) {
    return array_of(presumed, [](const Presumption& p) {
        return Json{{"ingredient", p.ingredient}, {"on_hand", p.on_hand}, {"matters", p.matters}, {"says", p.says}, {"add", p.add},
                    {"reason", json_of(p.reason)}};
    });
}

Json json_of(const std::vector<Reason>& reasons) {
    return array_of(reasons, [](const Reason& r) { return json_of(r); });
}

Json json_of(const std::vector<AllergenText>& allergens) {
    return array_of(allergens, [](const AllergenText& a) {
        const Json declare = array_of(a.declare, [](const auto& d) { return Json{{"code", d.first}, {"words", d.second}}; });
        Json json{{"allergen", a.allergen}, {"from", a.from}, {"declare", declare}, {"sure", a.sure}};
        if (a.beside) json["beside"] = true;
        if (a.reckoned) {
            json["reckoned"] = in_words(*a.reckoned);
            json["reckoned_mg_kg"] = {{"least", num(a.reckoned->least_mg_kg)},
                                      {"most", num(a.reckoned->most_mg_kg)},
                                      {"declared_from", a.reckoned->from_mg_kg ? num(*a.reckoned->from_mg_kg) : Json()}};
        }
        return json;
    });
}

Json json_of(const CoreAsked& core) { return {{"core_c", num(core.core_c)}, {"hold_s", num(core.hold_s)}}; }

Json json_of(const PageSafety& safety) {
    return {{"allergens", json_of(safety.allergens)}, {"cautions", json_of(safety.cautions)}, {"core", json_of(safety.core)}};
}

Json json_of(const std::vector<Role>& roles) {
    return array_of(roles, [](Role r) { return std::string(word(r)); });
}

Json json_of(const PerProperty<Band>& properties) {
    Json out = Json::object();
    for_each_property([&](Property p) { out[std::string(info(p).key)] = json_of(properties[p]); });
    return out;
}

std::string printed(const Json& json, Form form) {
    return json.dump(form == Form::line ? -1 : 2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace standin::cli
