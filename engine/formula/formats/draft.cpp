#include "formula/formats/draft.hpp"

#include <algorithm>
#include <cmath>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "core/words.hpp"
#include "formula/amounts/heading_base.hpp"
#include "formula/amounts/meat_shares.hpp"
#include "formula/amounts/own_share.hpp"
#include "formula/amounts/sheet_size.hpp"
#include "formula/amounts/sheet_unit.hpp"
#include "formula/amounts/written_preparation.hpp"
#include "formula/food/line_phrases.hpp"
#include "formula/food/part_of_food.hpp"
#include "formula/food/told_allergens.hpp"
#include "formula/formats/bases.hpp"
#include "formula/formats/going_without.hpp"
#include "formula/formats/share_sheet.hpp"
#include "formula/hazards/hazards.hpp"
#include "formula/hazards/line_beside.hpp"
#include "formula/hazards/page_words.hpp"
#include "formula/lexer/digits.hpp"
#include "formula/lexer/sentences.hpp"
#include "formula/lexer/spaces.hpp"
#include "formula/line/each_of.hpp"
#include "formula/line/food_beside.hpp"
#include "formula/line/line_text.hpp"
#include "formula/line/method_facts.hpp"
#include "formula/line/several_in_line.hpp"
#include "formula/line/soaked_in.hpp"
#include "formula/words/line_asides.hpp"
#include "formula/words/tongues.hpp"
#include "knowledge/records/word_list.hpp"
#include "knowledge/told/guests.hpp"

namespace standin {
namespace {

constexpr std::ptrdiff_t most_failed = 50;

Confidence least(const std::vector<LineDoubt>& doubts) {
    Confidence confidence = Confidence::sure;
    for (const auto& doubt : doubts) confidence = std::max(confidence, doubt.confidence);
    return confidence;
}

bool brings(const Formula& formula, const std::string& allergen, const Knowledge& knowledge) {
    const auto told = [&](const auto& declared) {
        return std::any_of(declared.begin(), declared.end(), [&](const Declared& one) { return one.allergen == allergen; });
    };
    const auto stands_beside = [&](const Beside& beside) {
        const Ingredient* food = beside.ingredient.empty() ? nullptr : knowledge.ingredient(beside.ingredient);
        return food && contains(food->allergens, allergen);
    };
    if (std::any_of(formula.beside.begin(), formula.beside.end(), stands_beside)) return true;
    return told(formula.declared) || std::any_of(formula.lines.begin(), formula.lines.end(), [&](const Line& line) {
               const auto& has = knowledge.ingredient(line.ingredient)->allergens;
               return told(line.declared) || std::find(has.begin(), has.end(), allergen) != has.end();
           });
}

bool holds(const Formula& formula, Species species, const Knowledge& knowledge) {
    return std::any_of(formula.lines.begin(), formula.lines.end(), [&](const Line& line) {
        const auto& meat = knowledge.ingredient(line.ingredient)->meat;
        return meat && meat->species == species;
    });
}

// The first of them, and how many more there are.
Reason some_lines(ReasonKind kind, std::vector<std::string> lines, std::size_t few) {
    const std::size_t more = lines.size() > few ? lines.size() - few : 0;
    lines.resize(std::min(lines.size(), few));
    return make_reason(kind, {{"more", {}, static_cast<double>(more), "lines"}}, std::move(lines));
}

// Words of another tongue are read one by one: told, for a turn of phrase may mean something else.
void tell_of_tongues(Draft& draft) {
    constexpr std::size_t few = 3;
    std::vector<std::string> lines;
    for (const auto& line : draft.lines)
        if (line.read && line.read->translated) lines.push_back(one_line(line.written));
    if (!lines.empty()) draft.formula.read_as.push_back(some_lines(ReasonKind::other_tongue, std::move(lines), few));
}

void tell_of_page(Draft& draft) {
    constexpr std::size_t few = 4;
    const auto tell_of = [&](std::string_view role, const std::vector<std::string>& sentences) {
        if (sentences.empty()) return;
        draft.formula.read_as.push_back(make_reason(ReasonKind::of_the_recipe, {}, sentences));
        draft.formula.read_as.back().role = role;
    };
    tell_of(said_of_guests_role, draft.said_of_guests);
    tell_of(said_of_going_without_role, draft.said_of_going_without);
    // What is kept as a note was not passed over.
    auto lines = std::move(draft.said_of_recipe);
    const std::string note = "\n" + draft.formula.note + "\n";
    std::erase_if(lines, [&](const std::string& line) {
        return contains(draft.said_of_guests, line) || contains(draft.said_of_going_without, line) ||
               note.find("\n" + line + "\n") != std::string::npos;
    });
    if (!lines.empty()) draft.formula.read_as.push_back(some_lines(ReasonKind::of_the_recipe, std::move(lines), few));
}

// All of them: what is in no line must be seen somewhere.
std::vector<Reason> told_beside_lines(Draft& draft) {
    std::vector<Reason> told;
    std::erase_if(draft.headings, [&](const std::string& heading) { return contains(draft.said_of_recipe, heading); });
    if (const std::size_t all = draft.headings.size(); all > 0)
        told.push_back(some_lines(ReasonKind::headings, std::move(draft.headings), all));
    told.insert(told.end(), draft.formula.read_as.begin(), draft.formula.read_as.end());
    if (const std::size_t all = draft.said_of_recipe.size(); all > 0)
        told.push_back(some_lines(ReasonKind::of_the_recipe, draft.said_of_recipe, all));
    return told;
}

void tell_once(std::vector<Reason>& all, Reason told) {
    if (!contains(all, told)) all.push_back(std::move(told));
}

// What notes and instructions name and no line has: said on every page, for it may be meant to go in.
void tell_what_no_line_has(Draft& draft, const Knowledge& knowledge) {
    Formula& formula = draft.formula;
    for (const auto& named : draft.named) {
        if (brings(formula, named.allergen, knowledge)) continue;
        Reason beside = reason_about(ReasonKind::allergen_beside, named.words);
        beside.role = named.allergen;
        tell_once(formula.read_as, std::move(beside));
    }
    for (const auto* meat : draft.meat_named)
        if (!holds(formula, meat->meat->species, knowledge))
            tell_once(formula.read_as, make_reason(ReasonKind::meat_beside, {}, {meat->names.front()}));
}

// What is said beside the lines of a food in them: bitter zucchini, beans that were not soaked.
void hold_against_lines(Draft& draft, const Knowledge& knowledge) {
    std::vector<LineAsWritten> lines;
    for (const auto& line : draft.lines)
        if (!line.beside && line.read) lines.push_back({line.written, &line.read->line});
    for (const auto& said : draft.said) {
        auto found = said_of_lines(said, lines, knowledge);
        for (auto& told : found.told) tell_once(draft.formula.read_as, std::move(told));
        if (!found.danger) continue;
        found.danger->where = said.where;
        draft.troubles.add(std::move(*found.danger));
    }
}

// What was said beside the lines, told and held against them once all of it is read.
void mind_the_words_beside(Draft& draft, const Knowledge& knowledge) {
    tell_of_tongues(draft);
    take_out_of_lines(draft, knowledge);
    tell_of_page(draft);
    hold_against_lines(draft, knowledge);
}

// Makers reckon shares on the meat; where the other shares are of the batch, so is one that does not say. Of both: ask.
Whole usual_whole(const Draft& draft, bool meat) {
    const auto says = [&](Whole whole) {
        return std::any_of(draft.lines.begin(), draft.lines.end(), [&](const DraftLine& line) {
            return !line.beside && line.read && line.read->share && line.read->share->of == whole;
        });
    };
    const bool of_meat = says(Whole::meat), of_batch = says(Whole::batch);
    if (of_batch) return of_meat ? Whole::none : Whole::batch;
    return meat ? Whole::meat : Whole::none;
}

bool both_read(const std::vector<std::string>& parts, const Origin& origin, const Knowledge& knowledge) {
    return std::all_of(parts.begin(), parts.end(), [&](const std::string& part) { return read_line(part, origin, knowledge).has_value(); });
}

// Links are as wide as the casing that the formula names, where it says nothing else.
void take_width_of_casing(Formula& formula) {
    if (formula.process.diameter_mm) return;
    for (const auto& beside : formula.beside) {
        const auto width = beside.kind == BesideKind::casing ? casing_width_mm(beside.written) : std::nullopt;
        if (!width) continue;
        formula.process.diameter_mm = *width;
        return;
    }
}

// "Batch 5 kg", "Total 100 %"
bool tells_whole(Draft& draft, std::string_view text, const std::string& where, const Knowledge& knowledge) {
    if (adds_up_shares(text, knowledge)) return true;
    const auto size = sheet_size(text, knowledge);
    if (!size) return false;
    if (!draft.size || draft.size->in_title)
        draft.size = DraftSize{size->grams, size->of, size->total, false, draft.lines.size(), one_line(text), where};
    return true;
}

}  // namespace

bool Draft::hopeless() const {
    return troubles.full() || std::count_if(lines.begin(), lines.end(), [](const DraftLine& line) { return !line.read; }) >= most_failed;
}

void put_beside(Draft& draft, Beside beside, std::string_view text, const std::string& where, const Origin& origin,
                const Knowledge& knowledge) {
    look_through(draft, text, where, knowledge);
    beside.written = text;
    draft.lines.push_back({std::string(text), where, ReadLine{}, std::move(beside), origin});
}

void take_ingredient_line(Draft& draft, std::string_view text, const std::string& where, const Origin& origin, const Knowledge& knowledge) {
    if (is_said_of_going_without(text, knowledge)) {
        look_through(draft, text, where, knowledge, true);
        return draft.said_of_recipe.push_back(one_line(text));
    }
    auto beside = beside_the_mass(text, knowledge);
    const auto english = in_english(text, knowledge);
    for (const auto& way : english)
        if (beside || (beside = beside_the_mass(way.text, knowledge))) break;
    if (beside) return put_beside(draft, std::move(*beside), text, where, origin, knowledge);
    if (const auto unit = unit_in_heading(text, knowledge)) {
        draft.unit = unit->unit;
        if (!unit->per) return take_heading(draft, text, where, knowledge);
    }
    if (auto base = heading_base(text, knowledge)) {
        if (draft.of_mass && whole_in_words(text, knowledge) == Whole::unsaid) base->of = Whole::batch;
        draft.bases.push_back({*base, one_line(text), where});
        draft.under_base = true;
        return take_heading(draft, text, where, knowledge);
    }
    const Whole told = has_digit(text) ? Whole::unsaid : whole_in_words(text, knowledge);
    if (told != Whole::unsaid) draft.shares_of = told;
    if (told != Whole::unsaid || is_heading(text, knowledge)) {
        draft.under_base = false;
        return take_heading(draft, text, where, knowledge);
    }
    if (const auto parts = two_parts_of_fruit(text, english); !parts.empty() && both_read(parts, origin, knowledge)) {
        for (const auto& part : parts) take_ingredient_line(draft, part, where, origin, knowledge);
        return;
    }
    auto parts = shares_of_one_weight(text, knowledge);
    if (parts.empty()) parts = several_in_line(text, origin, knowledge);
    if (!parts.empty()) {
        const bool based = draft.under_base;
        for (const auto& part : parts) take_ingredient_line(draft, part, where, origin, knowledge);
        draft.under_base = based;
        return draft.formula.read_as.push_back(reason_about(ReasonKind::several_in_line, one_line(text), parts));
    }
    if (const auto parts = each_of_several(text, origin, knowledge); !parts.empty()) {
        for (const auto& part : parts) take_ingredient_line(draft, part, where, origin, knowledge);
        return;
    }
    if (const auto soaked = soaked_in_measured(text, origin, knowledge)) {
        for (const auto& part : {soaked->food, soaked->liquid}) take_ingredient_line(draft, part, where, origin, knowledge);
        draft.formula.read_as.push_back(soaked->told);
        draft.formula.read_as.back().about = one_line(text);
        return;
    }
    if (auto outside = food_beside(text, origin, knowledge)) return put_beside(draft, std::move(*outside), text, where, origin, knowledge);
    std::size_t base = draft.under_base ? draft.bases.size() : draft.title_base;
    auto read = read_line(text, origin, knowledge, {}, false, around_line(draft, base));
    if (base > 0 && read && knowledge.ingredient(read->line.ingredient)->meat) {
        read = read_line(text, origin, knowledge, {}, false, around_line(draft, 0));
        if (read && base == draft.title_base && !read->unit_given) base = 0;
    }
    if (!read && tells_whole(draft, text, where, knowledge)) return take_heading(draft, text, where, knowledge);
    if (!read && (is_said_of_guests(text, knowledge) || all_said_of_recipe(text, knowledge))) {
        look_through(draft, text, where, knowledge, true);
        return draft.said_of_recipe.push_back(one_line(text));
    }
    if (!read && is_method_line(text, knowledge, draft.foods())) {
        look_through(draft, text, where, knowledge, true);
        draft.formula.method.emplace_back(one_line(text));
        return draft.formula.read_as.push_back(reason_about(ReasonKind::part_of_method, std::string(text)));
    }
    draft.lines.push_back({std::string(text), where, std::move(read), {}, origin, base});
}

void judge_by_share(Draft& draft, const Knowledge& knowledge) {
    constexpr double most_share = 0.05;    // of the batch: what a herb or a root for its taste may be. Judgement
    constexpr double small_share = 0.01;   // likewise a spice
    constexpr double tiny_share = 0.0025;  // likewise: among so little of anything the next is a spice too
    double batch = 0;
    const auto counts = [](const DraftLine& line) { return !line.beside && line.read && !line.read->share; };
    for (const auto& line : draft.lines)
        if (counts(line)) batch += line.read->line.grams.mid;
    if (batch <= 0) return;
    const auto under = [&](const DraftLine& line, double share) { return counts(line) && line.read->line.grams.mid < share * batch; };
    const auto is_dry = [&](const DraftLine& line) {  // much of it may be the fresh one
        return counts(line) && knowledge.ingredient(line.read->line.ingredient)->tissue == Tissue::dry;
    };
    const auto is_spice = [&](std::size_t i) {
        if (i >= draft.lines.size() || !under(draft.lines[i], small_share)) return false;
        const auto& line = draft.lines[i].read->line;
        const auto& food = *knowledge.ingredient(line.ingredient);
        const bool dry = food.tissue == Tissue::dry && food.roles.front() != Role::binder;
        return dry || line.grams.mid < tiny_share * batch;
    };
    std::vector<std::size_t> again;
    for (std::size_t i = 0; i < draft.lines.size(); ++i)
        if (draft.lines[i].origin && !draft.lines[i].beside &&
            (!draft.lines[i].read || under(draft.lines[i], most_share) || is_dry(draft.lines[i])))
            again.push_back(i);
    std::vector<bool> spices(draft.lines.size());
    for (const auto i : again) spices[i] = (i == 0 || is_spice(i - 1)) && is_spice(i + 1);
    const bool meat = std::any_of(draft.lines.begin(), draft.lines.end(), [&](const DraftLine& line) {
        return counts(line) && knowledge.ingredient(line.read->line.ingredient)->meat;
    });
    const Whole whole = !draft.sheet ? usual_whole(draft, meat) : draft.sheet->of == Whole::meat ? Whole::meat : Whole::batch;
    for (const auto i : again) {
        auto& line = draft.lines[i];
        const bool of_meat = line.read && knowledge.ingredient(line.read->line.ingredient)->meat;
        Around around = around_line(draft, of_meat ? 0 : line.base);
        if (line.unit) around.unit = line.unit;
        around.grams = batch;
        around.meat = meat;
        around.among_spices = spices[i];
        around.share = whole;
        around.in_sheet = draft.sheet.has_value();
        auto read = read_line(line.written, *line.origin, knowledge, {}, false, around);
        if (read || line.read) line.read = std::move(read);
        weigh_in_sheet(draft, line, knowledge);
    }
}

void add_to_note(Formula& formula, std::string_view text) {
    text.remove_prefix(std::min(text.size(), text.find_first_not_of("# ")));  // a comment loses its sign
    formula.note += (formula.note.empty() ? "" : "\n") + one_line(text);
}

namespace {

// "Serve: with a cold beer and warm bread", "note: serve it with warm bread".
bool is_served_with(std::string_view text, const Knowledge& knowledge) {
    const auto colon = text.find(':');
    if (colon != std::string_view::npos && text.find_first_not_of(' ', colon + 1) != std::string_view::npos &&
        is_served_with(text.substr(text.find_first_not_of(' ', colon + 1)), knowledge))
        return true;
    return knowledge.in_list(WordList::serving_word, fold(text.substr(0, colon == std::string_view::npos ? text.find(' ') : colon)));
}

}  // namespace

void look_through(Draft& draft, std::string_view text, const std::string& where, const Knowledge& knowledge, bool lost) {
    const auto& reasons = draft.formula.read_as;
    const auto by_eye = [&] { return static_cast<std::size_t>(std::count_if(reasons.begin(), reasons.end(), tells_of_doneness)); };
    const auto found = [&] {
        return draft.said_of_guests.size() + draft.said_of_going_without.size() + draft.named.size() + draft.meat_named.size() +
               reasons.size();
    };
    const std::size_t before = found(), by_eye_before = by_eye();
    const auto sentences = sentences_of(text);
    for (const auto& sentence : sentences)  // what is said of a pan in the next one makes no raw meat safe
        if (auto danger = danger_beside(sentence, knowledge)) {
            danger->where = where;
            draft.troubles.add(std::move(*danger));
            break;
        }
    const auto append = [](auto& all, const auto& more) { all.insert(all.end(), more.begin(), more.end()); };
    for (auto& told : told_in_sentences(sentences, knowledge)) tell_once(draft.formula.read_as, std::move(told));
    if (const auto celsius = cooked_too_cool(sentences, std::nullopt, knowledge))
        tell_once(draft.formula.read_as, make_reason(ReasonKind::cooked_too_cool, {{"cooking", {}, *celsius, "C"}}));
    const GoingWithout without(sentences, knowledge);
    without.keep_in(draft);
    append(draft.formula.declared, without.left(text, [&](const std::string& said, const std::vector<std::string>& parts) {
        return declared_beside(said, parts, knowledge);
    }));
    const bool at_table = is_served_with(text, knowledge);  // bread and beer are then in no mass
    const auto beside_the_plate = [&](const Declared& named) {
        if (!knowledge.in_list_as_written(WordList::beside_plate, named.words)) return false;
        return at_table || std::all_of(sentences.begin(), sentences.end(), [&](const auto& sentence) {
                   const auto all = allergens_named(sentence, knowledge);
                   const auto same = [&](const Declared& one) { return one.words == named.words; };
                   return is_served_with(sentence, knowledge) || std::none_of(all.begin(), all.end(), same);
               });
    };
    const auto all_named = [&](const std::string& said, const std::vector<std::string>&) { return allergens_named(said, knowledge); };
    for (auto& named : without.left(text, all_named))
        if (!beside_the_plate(named)) draft.named.push_back(std::move(named));
    for (std::size_t i = 0; i < sentences.size(); ++i)
        for (auto& food : foods_with_allergens(sentences[i], knowledge)) {
            const auto& sentence = sentences[i];
            if (without.says_of(i, food.allergen)) continue;
            if ((at_table || is_served_with(sentence, knowledge)) && knowledge.in_list_as_written(WordList::beside_plate, food.words))
                continue;
            const auto said = [&](const Declared& one) {
                return one.allergen == food.allergen && food.words.find(one.words) != std::string::npos;
            };
            if (std::none_of(draft.named.begin(), draft.named.end(), said)) draft.named.push_back(std::move(food));
        }
    if (!without.any()) append(draft.meat_named, meats_named(text, knowledge));
    else
        for (const auto& sentence : without.others()) append(draft.meat_named, meats_named(sentence, knowledge));
    for (const auto& sentence : sentences)
        if (std::string said = one_line(sentence); !guests_in(sentence, knowledge).empty() && !contains(draft.said_of_guests, said))
            draft.said_of_guests.push_back(std::move(said));
    draft.said.push_back({std::string(text), where, lost});
    if (!lost || found() == before) return;
    if (found() - before > by_eye() - by_eye_before) add_to_note(draft.formula, text);
    else draft.judged_by_eye.emplace_back(text);
}

void take_heading(Draft& draft, std::string_view text, const std::string& where, const Knowledge& knowledge) {
    draft.headings.push_back(one_line(text));
    draft.of_mass = draft.of_mass || tells_mass_of_all(text, knowledge);
    const std::size_t told = draft.formula.read_as.size();
    look_through(draft, text, where, knowledge);
    if (draft.formula.read_as.size() > told) add_to_note(draft.formula, text);
}

void look_through_title(Draft& draft, std::string_view title, const std::string& where, const Knowledge& knowledge) {
    for (auto& told : told_of_eaters(title, knowledge)) tell_once(draft.formula.read_as, std::move(told));
    if (auto danger = danger_in_title(title, knowledge)) {
        danger->where = where;
        draft.troubles.add(std::move(*danger));
    } else if (auto told = danger_beside(title, knowledge)) {
        draft.formula.read_as.push_back(make_reason(ReasonKind::title_told));
        draft.formula.read_as.back().note = told->message;
        draft.formula.read_as.back().about = name_in_title(title, knowledge);
    }
}

Result<Formula> finished(Draft draft, const Knowledge& knowledge) {
    mind_the_words_beside(draft, knowledge);
    std::vector<ReadLine> lines;
    bool asked_whole = draft.asks_base;  // once for the sheet
    for (auto& line : draft.lines) {
        if (line.beside) {
            draft.formula.beside.push_back(std::move(*line.beside));
        } else if (line.read) {
            lines.push_back(std::move(*line.read));
        } else {
            const bool asks_whole = line.read.error().message.starts_with(share_of_what);
            if (!asks_whole || !asked_whole) draft.troubles.add(std::move(line.read.error()));
            asked_whole = asked_whole || asks_whole;
        }
    }
    if (draft.troubles.any()) return draft.troubles.failure();
    if (lines.empty()) return failure(Trouble::bad_data, "no ingredient lines");
    draft.formula.lines = settle(std::move(lines), knowledge, draft.troubles);
    if (draft.troubles.any()) return draft.troubles.failure();
    take_width_of_casing(draft.formula);
    tell_what_no_line_has(draft, knowledge);
    return std::move(draft.formula);
}

FormulaReading shown(Draft draft, const Knowledge& knowledge) {
    FormulaReading reading;
    reading.title = draft.formula.title;
    reading.note = draft.formula.note;
    reading.told = told_beside_lines(draft);
    mind_the_words_beside(draft, knowledge);
    const bool all = std::all_of(draft.lines.begin(), draft.lines.end(), [](const DraftLine& line) { return line.read.has_value(); });
    const bool may_miss_meat = misses_meat(draft, knowledge);
    std::vector<ReadLine> understood;
    for (auto& line : draft.lines) {
        LineReading& one = reading.lines.emplace_back(LineReading{line.written, line.where, {}, {}, {}, Confidence::unsure, {}, {}, {}});
        if (line.beside) {
            one.beside = why_beside(*line.beside);
            draft.formula.beside.push_back(std::move(*line.beside));
            continue;
        }
        if (!line.read) {
            one.asked = std::move(line.read.error());
            continue;
        }
        if (line.read->share && may_miss_meat) {
            one.asked = Error{Trouble::bad_data, "a share of what was not understood: no weight can be told yet", line.where, {}};
            continue;
        }
        one.confidence = least(line.read->doubts);
        for (const auto& doubt : line.read->doubts) one.why.push_back(doubt.what);
        if (line.read->share && !all) {
            one.why.push_back(make_reason(ReasonKind::weighed_by_rest));
            one.confidence = Confidence::unsure;
        }
        understood.push_back(std::move(*line.read));
    }
    const auto settled = understood.empty() ? std::vector<Line>() : settle(std::move(understood), knowledge, draft.troubles);
    auto next = settled.begin();
    for (auto& line : reading.lines)
        if (!line.asked && !line.beside) {
            line.line = *next++;
            if (line.line->grams.mid <= 0) {
                line.asked = Error{Trouble::bad_data, "a share of what was not understood: no weight can be told yet", line.where, {}};
                line.line.reset();
                line.why.clear();
                continue;
            }
            line.name = knowledge.ingredient(line.line->ingredient)->names.front();
            if (!line.line->called.empty()) line.name = line.line->called + ", like " + line.name;
            for (const auto& step : line.line->prepared) line.prepared.push_back(written(step, knowledge));
        }
    reading.errors = draft.troubles.all();
    if (!all || draft.troubles.any() || settled.empty()) return reading;
    draft.formula.lines = settled;
    take_width_of_casing(draft.formula);
    tell_what_no_line_has(draft, knowledge);
    reading.formula = std::move(draft.formula);
    return reading;
}

}  // namespace standin
