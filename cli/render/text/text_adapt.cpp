#include <algorithm>

#include "render/presumed_words.hpp"
#include "render/sentences.hpp"
#include "render/text/text.hpp"
#include "render/text/text_parts.hpp"
#include "render/text/text_variant.hpp"
#include "render/union.hpp"
#include "render/units.hpp"
#include "standin/narrate.hpp"

namespace standin::cli {
namespace {

std::string search_part(const AdaptAnswer& a, const Look& look) {
    if (a.plans_visited == 0) return "";  // the demands contradict each other: there was nothing to search
    const std::string plans = std::to_string(a.plans_visited) + (a.plans_visited == 1 ? " plan" : " plans") + " looked at. ";
    return heading("How sure", look) + paragraph(plans + proof_words(a), look);
}

std::string help_part(const AdaptAnswer& a, Units units, const Look& look) {
    std::string text;
    for (const auto& help : what_would_help(a)) text += bulleted(help.heading, in_full(help.reasons, units), look);
    return text;
}

// As fully as three lines hold it, and never cut off.
std::string presumed_in_brief(const AdaptAnswer& a, const Engine& engine, const Look& look) {
    constexpr std::size_t most = 3;
    std::vector<std::string> lines;
    for (const auto as : {PresumedAs::with_kin, PresumedAs::dry_in_one, PresumedAs::by_name_what_matters}) {
        lines = wrapped(presumed_sentence(a, engine, as), look.width);
        if (lines.size() <= most) break;
    }
    std::string out;
    for (const auto& line : lines)
        if (!line.empty()) out += line + "\n";
    return out;
}

}  // namespace

std::string adapt_text(const AdaptAnswer& answer, const Engine& engine, const Detail& detail, const Look& look) {
    const auto& [units, full, beside] = detail;
    const AdaptAnswer a = told_in(answer, units);
    const Together all = together(a);
    const VariantPage page{a.base, engine, units, look, beside};
    std::string text = first_of_all(told_first(a.base.read_as, units), look) + first_of_all(said_first(a, units), look) +
                       paragraph(answer_first(a), look, 0) + safety_first(all, look) + own_records(a.base.overlay, look);
    for (const auto& line : asked_as_understood(a, engine)) text += paragraph(line, look, 0);
    text += presumed_in_brief(a, engine, look);
    text += bulleted(conflict_heading(a), in_full(a.conflict, units), look) + help_part(a, units, look) +
            bulleted("What can be reached", in_full(a.reach, units), look);
    for (const auto& v : a.variants)
        text += full                        ? variant_in_full(v, page)
                : &v == &a.variants.front() ? variant_part(v, page) + (a.variants.size() > 1 ? "\n" : "")
                                            : variant_in_three_lines(v, a.variants.front(), page);
    text += glut_part(beside, units, look);
    if (full || !a.proved) text += search_part(a, look);
    if (full) text += bulleted("Taken for granted", presumed_in_words(a), look);
    text += read_as_part(read_as_words(a.base.read_as, units), look);
    if (!full) text += safety_in_brief(all, look);
    else text += safety_in_full(all, look);
    return text + (full || a.variants.empty() ? "" : "More: --full. To paper: --save FILE, --sheet (--variant N).\n");
}

}  // namespace standin::cli
