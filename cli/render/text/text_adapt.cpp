#include "render/sentences.hpp"
#include "render/text/text.hpp"
#include "render/text/text_parts.hpp"
#include "render/text/text_variant.hpp"

namespace standin::cli {
namespace {

std::string search_part(const AdaptAnswer& a, const Look& look) {
    if (a.plans_visited == 0) return "";  // the demands contradict each other: there was nothing to search
    const std::string plans = std::to_string(a.plans_visited) + (a.plans_visited == 1 ? " plan" : " plans") + " looked at. ";
    return heading("How sure", look) + paragraph(plans + (a.proved ? "Proved: no plan left out can come nearer than those shown."
                                                                   : "Not proved: a plan not looked at could still be up to " +
                                                                         number(a.gap, 1) + " noticeable differences nearer."),
                                                 look);
}

std::string list_part(const char* head, const std::vector<std::string>& items, const Look& look) {
    std::string out = items.empty() ? "" : heading(head, look);
    for (const auto& item : items) out += bullet(item, look);
    return out;
}

}  // namespace

std::string adapt_text(const AdaptAnswer& a, const Engine& engine, const Look& look) {
    std::string page = paragraph(base_in_short(a.base), look, 0) + paragraph(answer_first(a), look, 0);
    for (const auto& line : asked_as_understood(a, engine)) page += paragraph(line, look, 0);
    page += list_part("These demands cannot all be met", a.conflict, look) + list_part("What would give", a.would_give, look) +
            list_part("What can be reached", a.reach, look);
    for (const auto& v : a.variants) page += variant_part(v, a.base, engine, look);
    page += search_part(a, look) + read_as_part(a.base.read_as, look) + list_part("Taken for granted", presumed_in_words(a), look);
    page += allergens_part(a.base.allergens, look);
    page += paragraph("These are the original's; what a variant adds stands with it.", look);
    return page + cautions_part(a.base.cautions, look);
}

}  // namespace standin::cli
