#include <nlohmann/json.hpp>

#include "render/json/json_parts.hpp"

namespace standin::cli {

std::string why_json(const WhyAnswer& a) {
    const auto& lines = a.prediction.lines;
    return printed(
        {{"title", a.prediction.title},
         {"property", std::string(a.asked().key)},
         {"unit", std::string(a.asked().unit)},
         {"band", json_of(a.band)},
         {"lines",
          array_of(a.lines,
                   [&](const LineLever& l) {
                       return Json{{"line", l.line + 1}, {"ingredient", lines[l.line].ingredient}, {"for_a_tenth_more", json_of(l.change)}};
                   })},
         {"unknowns", array_of(a.unknowns,
                               [](const Unknown& u) {
                                   return Json{{"what", u.what},       {"advice", u.advice},    {"reason", json_of(u.reason)},
                                               {"kitchen", u.kitchen}, {"share", num(u.share)}, {"band_if_known", json_of(u.known)}};
                               })},
         {"measurements", array_of(a.measurements,
                                   [](const Measurement& m) {
                                       return Json{{"what", m.what},
                                                   {"reason", json_of(m.reason)},
                                                   {"kitchen_line", m.line},
                                                   {"band_if_measured", json_of(m.known)},
                                                   {"narrower", num(m.narrower)}};
                                   })},
         {"together", a.together ? Json{{"what", a.together->what},
                                        {"kitchen_lines", a.together->lines},
                                        {"reasons", json_of(a.together->reasons)},
                                        {"band_if_measured", json_of(a.together->known)},
                                        {"narrower", num(a.together->narrower)}}
                                 : Json()},
         {"factors", array_of(a.factors,
                              [](const Factor& f) {
                                  return Json{{"what", f.what}, {"value", num(f.value)}, {"gives_back", num(f.gives_back)}};
                              })},
         {"read_as", in_full(a.prediction.read_as)},
         {"read_as_reasons", json_of(a.prediction.read_as)},
         {"allergens", json_of(a.prediction.allergens)},
         {"cautions", json_of(a.prediction.cautions)}});
}

}  // namespace standin::cli
