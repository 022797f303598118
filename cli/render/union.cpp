#include "render/union.hpp"

#include <algorithm>
#include <type_traits>

#include "render/allergen_words.hpp"
#include "render/units.hpp"
#include "words.hpp"

namespace standin::cli {
namespace {

// What one of the batches asks to be minded.
struct Own {
    const std::vector<AllergenText>* allergens;
    const std::vector<CautionText>* cautions;
};

// All that a variant asks, or only what it asks beyond the original.
enum class Told { all, new_only };

const AllergenText* found(const std::vector<AllergenText>& all, const AllergenText& one) {
    const auto at =
        std::find_if(all.begin(), all.end(), [&](const AllergenText& a) { return a.allergen == one.allergen && a.sure == one.sure; });
    return at == all.end() ? nullptr : &*at;
}

const CautionText* found(const std::vector<CautionText>& all, const CautionText& one) {
    const auto at = std::find_if(all.begin(), all.end(), [&](const CautionText& c) { return is_same(c, one); });
    return at == all.end() ? nullptr : &*at;
}

// Whether the batch as it was has it, no less surely: what was declared before is not new where a packet may hold it.
bool had(const Own& before, const AllergenText& one) {
    return std::any_of(before.allergens->begin(), before.allergens->end(),
                       [&](const AllergenText& a) { return a.allergen == one.allergen && (a.sure || !one.sure); });
}

// One that is milder now than it was is not new.
bool had(const Own& before, const CautionText& one) {
    return found(*before.cautions, one) ||
           std::any_of(before.cautions->begin(), before.cautions->end(), [&](const CautionText& old) { return is_milder(one, old); });
}

// Numbers of the variants that something is said of.
template <class T>
std::vector<std::string> numbers(const T& one, const std::vector<Own>& own, const std::vector<T>* Own::*part) {
    std::vector<std::string> all;
    for (std::size_t i = 0; i < own.size(); ++i)
        if (found(*(own[i].*part), one)) all.push_back(std::to_string(i + 1));
    return all;
}

// "in 1 and 3", "new" where all have it and the original has not; empty: the original and all have it, or only the original.
template <class T>
std::string mark_of(const T& one, const Own& before, const std::vector<Own>& own, const std::vector<T>* Own::*part, Told told) {
    const auto said = numbers(one, own, part);
    const bool old = had(before, one);
    if (said.empty() || (old && said.size() == own.size())) return "";
    // Two figures of one limit stand on a page: the milder says whose it is.
    const bool milder = std::is_same_v<T, CautionText> && old && !found(*(before.*part), one);
    if (old && told == Told::new_only && !milder) return "";
    return milder ? "in " + listed(said) : said.size() == own.size() ? "new" : "in " + listed(said);
}

std::string brief_of(const CautionText& c) {
    if (c.brief.empty()) return c.text;
    const std::string brief = c.brief.back() == '.' ? c.brief : c.brief + ".";
    return c.reason.foods.empty() ? capital(brief) : capital(listed(c.reason.foods)) + ": " + brief;
}

bool is_in_words(const std::string& text) {
    const bool article = text.starts_with("A ");  // "A near relative of celery"
    return article || (text.size() > 1 && text[0] >= 'A' && text[0] <= 'Z' && text[1] >= 'a' && text[1] <= 'z');
}

std::string small(std::string text) {
    if (is_in_words(text)) text.front() = static_cast<char>(text.front() - 'A' + 'a');
    return text;
}

// A limit that the original passes too, with another figure.
bool is_still_over(const CautionText& now, const CautionText* before) {
    if (!before) return false;
    const auto value = [](const CautionText& c) {
        const auto& figures = c.reason.figures;
        const auto at = std::find_if(figures.begin(), figures.end(), [](const Figure& f) { return f.what == "value"; });
        return at == figures.end() ? std::optional<double>() : at->after;
    };
    if (value(now) && value(*before)) return *value(now) != *value(*before);
    return now.id == "over-most" && now.reason.foods != before->reason.foods && says_all_of(*before, now);
}

Together marked(const PageSafety& page, const Own& before, const std::vector<Own>& own, Told told = Told::all) {
    Together all;
    all.many = own.size() > 1;
    all.core = core(page.core);
    for (auto a : page.allergens) {
        const auto mark = mark_of(a, before, own, &Own::allergens, told);
        if (!mark.empty()) a.allergen += " (" + mark + ")";
        all.allergens.push_back(std::move(a));
    }
    std::vector<CautionText> of_all;
    for (auto c : page.cautions) {
        const CautionText* old = found(*before.cautions, c);
        c.brief = brief_of(c);
        const auto mark = mark_of(c, before, own, &Own::cautions, told);
        for (auto* text : {&c.text, &c.brief}) {
            if (is_still_over(c, old)) *text = "Still " + small(*text);
            if (!mark.empty()) *text = "(" + mark + ") " + *text;
        }
        (old || mark.empty() ? of_all : all.cautions).push_back(std::move(c));
    }
    all.cautions.insert(all.cautions.end(), of_all.begin(), of_all.end());
    return all;
}

// What the batch as it was only may hold is not its own where every other is sure to hold it.
bool surely_in_all(const std::vector<Own>& own, const AllergenText& one) {
    return !one.sure && std::all_of(own.begin(), own.end(), [&](const Own& each) {
        return std::any_of(each.allergens->begin(), each.allergens->end(),
                           [&](const AllergenText& a) { return a.sure && a.allergen == one.allergen; });
    });
}

// What is offered first; what only the batch as it was asks for, apart.
Together marked(const PageSafety& page, const PageSafety& offered, const Prediction& base, const std::vector<Own>& own,
                const std::string& name) {
    const Own before{&base.allergens, &base.cautions};
    if (own.empty()) return marked(page, before, own);
    Together all = marked(offered, before, own);
    all.only_of = name;
    if (base.core > offered.core) all.core_before = core(base.core);
    for (const auto& a : base.allergens)
        if (!found(offered.allergens, a) && !surely_in_all(own, a)) all.allergens_before.push_back(a);
    for (const auto& c : base.cautions)
        if (!found(offered.cautions, c) && c.id != "core-temperature") all.cautions_before.push_back(c);
    return all;
}

// What the formula and its first stand-in ask; one further down that asks for more is named with it.
std::string cores_of(const SwapsAnswer& answer) {
    CoreAsked told = answer.core;
    if (!answer.stand_ins.empty() && answer.stand_ins.front().core > told) told = answer.stand_ins.front().core;
    std::string text = core(told);
    for (bool more = false;; more = true) {
        const StandIn* next = nullptr;
        for (const auto& s : answer.stand_ins)
            if (s.core > told && (!next || next->core > s.core)) next = &s;
        if (!next) return text + (more ? "," : "");
        told = next->core;
        std::vector<std::string> rows;
        for (std::size_t i = 0; i < answer.stand_ins.size(); ++i)
            if (core(answer.stand_ins[i].core) == core(told)) rows.push_back(std::to_string(i + 1));
        text += ", or " + core(told) + " with " + listed(rows);
    }
}

}  // namespace

std::string cook_line(const Together& all) {
    return "Cook to " + all.core + " in the middle, measured" + (all.many ? ", whichever you make" : "") +
           (all.core_before.empty() ? "" : "; " + all.only_of + " to " + all.core_before) + ".";
}

Together together(const AdaptAnswer& answer) {
    std::vector<Own> own;
    for (const auto& v : answer.variants) own.push_back({&v.prediction.allergens, &v.prediction.cautions});
    return marked(answer.on_page, answer.of_variants, answer.base, own, "your original");
}

Together together(const MendAnswer& answer) {
    std::vector<Own> own;
    for (const auto& way : answer.ways) own.push_back({&way.prediction.allergens, &way.prediction.cautions});
    return marked(answer.on_page, answer.of_variants, answer.base, own, "the mass as it is");
}

namespace {

// Over what is offered: the line that goes out brings nothing.
std::vector<AllergenText> allergens_offered(const SwapsAnswer& answer) {
    std::vector<AllergenText> all;
    for (const auto& s : answer.stand_ins)
        for (const auto& one : s.allergens) {
            const auto same = std::find_if(all.begin(), all.end(),
                                           [&](const AllergenText& a) { return a.allergen == one.allergen && a.sure == one.sure; });
            if (same == all.end()) {
                all.push_back(one);
                continue;
            }
            for (const auto& food : one.from)
                if (std::find(same->from.begin(), same->from.end(), food) == same->from.end()) same->from.push_back(food);
            same->beside = same->beside && one.beside;
            if (same->reckoned && one.reckoned) {  // of several batches from the least to the most
                same->reckoned->least_mg_kg = std::min(same->reckoned->least_mg_kg, one.reckoned->least_mg_kg);
                same->reckoned->most_mg_kg = std::max(same->reckoned->most_mg_kg, one.reckoned->most_mg_kg);
            } else {
                same->reckoned.reset();
            }
        }
    std::stable_partition(all.begin(), all.end(), [](const AllergenText& a) { return a.sure; });
    return all;
}

// Whether all the foods that call for it have gone out of every formula offered.
bool is_of_what_goes(const CautionText& caution, const SwapsAnswer& answer) {
    const auto stays = [&](const std::string& food) {
        return std::any_of(answer.stand_ins.begin(), answer.stand_ins.end(), [&](const StandIn& s) {
            return std::any_of(s.formula.lines.begin(), s.formula.lines.end(), [&](const Line& line) { return line.ingredient == food; });
        });
    };
    return !caution.foods.empty() && std::none_of(caution.foods.begin(), caution.foods.end(), stays);
}

}  // namespace

Together together(const SwapsAnswer& answer) {
    std::vector<Own> own;
    for (const auto& s : answer.stand_ins) own.push_back({&s.allergens, &s.cautions});
    PageSafety page = answer.on_page;
    std::vector<CautionText> gone;
    if (!own.empty()) {
        page.allergens = allergens_offered(answer);
        const auto goes = std::stable_partition(page.cautions.begin(), page.cautions.end(),
                                                [&](const CautionText& c) { return !is_of_what_goes(c, answer); });
        gone.assign(goes, page.cautions.end());
        page.cautions.erase(goes, page.cautions.end());
    }
    Together all = marked(page, {&answer.allergens, &answer.cautions}, own, Told::new_only);
    all.only_of = "your original";
    all.cautions_before = std::move(gone);
    if (!own.empty())
        for (const auto& a : answer.allergens)
            if (!found(page.allergens, a) && !surely_in_all(own, a)) all.allergens_before.push_back(a);
    all.core = cores_of(answer);
    return all;
}

std::string allergens_before_in_short(const Together& all) {
    std::vector<std::string> names;
    for (const auto& a : all.allergens_before) names.push_back(allergen_in_short(a));
    return names.empty() ? "" : "Only in " + all.only_of + ": " + listed(names) + ".";
}

std::string cautions_before_in_short(const Together& all) {
    std::string titles;
    for (const auto& c : all.cautions_before) titles += (titles.empty() ? "" : "; ") + title_of(c);
    return titles.empty() ? "" : "Only for " + all.only_of + ": " + titles + ".";
}

std::vector<CautionText> all_cautions(const Together& all) {
    auto cautions = all.cautions;
    for (auto c : all.cautions_before) {
        c.text = "(only for " + all.only_of + ") " + c.text;
        cautions.push_back(std::move(c));
    }
    return cautions;
}

std::vector<AllergenText> all_allergens(const Together& all) {
    auto allergens = all.allergens;
    for (auto a : all.allergens_before) {
        a.allergen += " (only in " + all.only_of + ")";
        allergens.push_back(std::move(a));
    }
    return allergens;
}

std::vector<CautionText> with_briefs(std::vector<CautionText> cautions) {
    for (auto& c : cautions) c.brief = brief_of(c);
    return cautions;
}

namespace {

// A figure says nothing without what comes of it: "pH 5.2 raw, under 5.3: likely crumbly".
bool tells_a_figure(const CautionText& caution) {
    const auto& figures = caution.reason.figures;
    return std::any_of(figures.begin(), figures.end(), [](const Figure& f) { return f.what == "value"; });
}

std::string first_sentence(const std::string& text) {
    const std::string first = text.substr(0, text.find(". "));
    return first.ends_with('.') ? first.substr(0, first.size() - 1) : first;
}

// A sentence that has no short beginning, or is cut within brackets, is told as it is in short.
std::string short_title(const CautionText& caution) {
    constexpr std::size_t long_for_a_title = 72;
    std::string title = caution.text.substr(0, caution.text.find_first_of(":;,"));
    if (title.find(' ') == std::string::npos)
        title = caution.text.substr(0, caution.text.find_first_of(":;"));  // "Garlic, herbs ... in oil"
    title = title.substr(0, title.find(". "));
    const bool cut = std::count(title.begin(), title.end(), '(') != std::count(title.begin(), title.end(), ')');
    if ((cut || title.size() > long_for_a_title) && !caution.brief.empty())
        return caution.brief.substr(0, caution.brief.find_first_of(":;,"));
    return small(title);
}

}  // namespace

std::string title_of(const CautionText& caution) {
    const std::string title =
        tells_a_figure(caution) ? small(first_sentence(caution.brief.empty() ? caution.text : caution.brief)) : short_title(caution);
    std::vector<std::string> foods;
    if (!caution.foods.empty())
        for (const auto& said : caution.reason.foods) foods.push_back(said.substr(0, said.find(" (")));
    return title + (foods.empty() ? "" : " (" + listed(foods) + ")");
}

}  // namespace standin::cli
