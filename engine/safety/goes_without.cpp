#include "safety/goes_without.hpp"

#include <algorithm>
#include <iterator>

#include "core/contains.hpp"
#include "core/words.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/told/must_go_without.hpp"
#include "safety/sold_clean.hpp"
#include "safety/title_words.hpp"
#include "safety/wording.hpp"

namespace standin {
namespace {

void add_holder(std::vector<std::string>& names, const std::string& name) {
    if (!contains(names, name)) names.push_back(name);
}

bool says_the_same(const Exclusion& a, const Exclusion& b) { return a.kind == b.kind && a.foods == b.foods; }

std::vector<std::string> lines_of_note(std::string_view note) {
    std::vector<std::string> all;
    for (std::size_t at = 0; at < note.size();) {
        auto end = std::min(note.find('\n', at), note.size());
        for (auto stop = note.find(". ", at); stop < end; stop = end) end = stop;
        if (end > at) all.emplace_back(note.substr(at, end - at));
        at = end + 1;
    }
    return all;
}

// The sentences that the reader found; a formula that was filled by a program has only its note.
std::vector<std::string> sentences_of_guests(const Formula& formula) {
    std::vector<std::string> all;
    for (const auto& told : formula.read_as)
        if (told.kind == ReasonKind::of_the_recipe && told.role == said_of_going_without_role)
            for (const auto& sentence : told.foods) add_holder(all, sentence);
    if (all.empty()) all = lines_of_note(formula.note);
    return all;
}

bool is_kosher(const Exclusion& exclusion) { return exclusion.kind && exclusion.kind->id == "kosher"; }

class Gathering {
public:
    Gathering(const Formula& formula, const Knowledge& knowledge) : formula_(formula), knowledge_(knowledge) {}

    void of_text(const std::string& text, bool of_title) {
        const auto said = must_go_without(text, knowledge_);
        if (!said.said || (of_title && !said.plainly)) return;
        GoesWithout one{text, of_title, false, {}};
        std::vector<Exclusion> by_diet;  // stands last: what a diet takes in is told by it, and no allergy is
        for (const auto& food : said.foods)
            if (auto exclusion = exclusion_of(food, knowledge_); exclusion && !is_told(*exclusion)) {
                auto milk = is_kosher(*exclusion) ? milk_beside_meat(formula_, knowledge_) : std::nullopt;
                (exclusion->kind && exclusion->kind->diet ? by_diet : one.left).push_back(std::move(*exclusion));
                if (milk) by_diet.push_back(std::move(*milk));
            }
        one.left.insert(one.left.end(), std::make_move_iterator(by_diet.begin()), std::make_move_iterator(by_diet.end()));
        if (!one.left.empty() || said.foods.empty()) all_.push_back(std::move(one));
    }

    void of_promises(const std::string& title) {
        const TitleWords words(title, knowledge_);
        for (const auto& kind : knowledge_.records().kinds) {
            if (kind.diet) continue;
            const auto promise = words.promise_of(kind);
            if (!promise) continue;
            auto exclusion = exclusion_of(kind.names.front(), knowledge_);
            if (exclusion && exclusion->allergy) all_.push_back({promise->words, true, true, {std::move(*exclusion)}});
        }
    }

    std::vector<GoesWithout> all() && { return std::move(all_); }

private:
    bool is_told(const Exclusion& exclusion) const {
        return std::any_of(all_.begin(), all_.end(), [&](const GoesWithout& one) {
            return std::any_of(one.left.begin(), one.left.end(), [&](const Exclusion& other) { return says_the_same(other, exclusion); });
        });
    }

    const Formula& formula_;
    const Knowledge& knowledge_;
    std::vector<GoesWithout> all_;
};

CautionText guest_caution(const GoesWithout& guest, ReasonKind kind, std::string_view id, std::vector<std::string> foods,
                          const std::string& takes) {
    Reason reason = make_reason(kind, {}, std::move(foods));
    reason.about = id;
    reason.role = guest.words;
    reason.note = takes;
    if (guest.of_title) reason.by_way = {"title"};
    return caution_text(std::move(reason), "judgement", {}, guest.words);
}

}  // namespace

std::optional<Exclusion> milk_beside_meat(const Formula& formula, const Knowledge& knowledge) {
    const auto is_meat = [&](const Line& line) { return carries(*knowledge.ingredient(line.ingredient), "meat", knowledge); };
    if (std::none_of(formula.lines.begin(), formula.lines.end(), is_meat)) return std::nullopt;
    auto milk = exclusion_of("milk", knowledge);
    return milk ? std::optional(std::move(*milk)) : std::nullopt;
}

std::vector<GoesWithout> goes_without(const Formula& formula, const Knowledge& knowledge, bool promises) {
    Gathering gathering(formula, knowledge);
    if (promises || must_go_without(formula.title, knowledge).plainly) gathering.of_promises(formula.title);
    gathering.of_text(formula.title, true);
    for (const auto& sentence : sentences_of_guests(formula)) gathering.of_text(sentence, false);
    return std::move(gathering).all();
}

namespace {

// "Certified gluten-free buckwheat flour": what it may pick up in a mill is said not to be in it; what it is made of stays.
bool is_said_free(const Line& line, const Exclusion& exclusion, const Knowledge& knowledge) {
    constexpr std::string_view said_free = "said-free", gluten = "gluten", wheat = "wheat";
    if (!exclusion.kind || (exclusion.kind->id != gluten && exclusion.kind->id != wheat)) return false;
    if (tells_of_it(exclusion, line.declared, knowledge)) return false;
    const auto& held = knowledge.ingredient(line.ingredient)->allergens;
    if (std::any_of(held.begin(), held.end(), [&](const auto& one) { return takes_allergen(*exclusion.kind, one, knowledge); }))
        return false;
    return std::any_of(line.notes.begin(), line.notes.end(),
                       [&](const Reason& told) { return told.kind == ReasonKind::hazard_told && told.role == said_free; });
}

}  // namespace

std::vector<std::string> holding(const Formula& formula, const Exclusion& exclusion, const Knowledge& knowledge) {
    std::vector<std::string> names;
    for (const auto& line : formula.lines) {
        const Ingredient& food = *knowledge.ingredient(line.ingredient);
        if (is_said_free(line, exclusion, knowledge)) continue;
        if (exclusion.foods.count(food.id)) add_holder(names, food.names.front());
        else if (tells_of_it(exclusion, line.declared, knowledge))
            add_holder(names, food.names.front() + " (\"" + line.declared.front().words + "\")");
        else if (takes_line(exclusion, line, knowledge)) add_holder(names, food.names.front() + ", dried");
    }
    for (const auto& told : formula.declared)
        if (tells_of_it(exclusion, {told}, knowledge)) add_holder(names, "what its notes say (\"" + told.words + "\")");
    for (const auto& told : formula.read_as)
        if (told.kind == ReasonKind::allergen_beside && tells_of_it(exclusion, {{told.role, told.about}}, knowledge))
            add_holder(names, "what its notes name (\"" + told.about + "\")");
    for (const auto& beside : formula.beside)
        if (const Ingredient* food = knowledge.ingredient(beside.ingredient); food && exclusion.foods.count(food->id))
            add_holder(names, beside.written);
    for (const auto& beside : beside_excluded(formula, exclusion, knowledge)) add_holder(names, beside);
    return names;
}

std::vector<CautionText> cautions_of_guests(const Formula& formula, const Knowledge& knowledge) {
    std::vector<CautionText> all;
    for (const auto& guest : goes_without(formula, knowledge, false)) {
        if (guest.promised) continue;
        if (guest.left.empty()) {
            all.push_back(guest_caution(guest, ReasonKind::title_to_be_shown, "guest-unknown", {}, {}));
            continue;
        }
        std::vector<std::string> clash, takes;
        std::vector<const Kind*> diets;  // of which no record can vouch for a line
        for (const auto& exclusion : guest.left) {
            const auto held = holding(formula, exclusion, knowledge);
            for (const auto& name : held) add_holder(clash, name);
            if (exclusion.kind && exclusion.kind->diet) diets.push_back(exclusion.kind);
            else if (held.empty() && diets.empty()) takes.push_back(exclusion.word);
        }
        if (!clash.empty()) all.push_back(guest_caution(guest, ReasonKind::title_broken, guest_clash_id, clash, {}));
        if (!takes.empty()) all.push_back(guest_caution(guest, ReasonKind::title_to_be_shown, "guest-without", {}, listed(takes)));
        for (const auto& exclusion : guest.left)
            if (exclusion.kind && !guest.of_title && !sold_clean_in(formula, *exclusion.kind, knowledge).empty())
                all.push_back(guest_caution(guest, ReasonKind::title_of_diet, "note-promise", {}, exclusion.kind->clean_says));
        for (const Kind* diet : diets)
            all.push_back(
                guest_caution(guest, ReasonKind::title_of_diet, guest.of_title ? "title-promise" : "note-promise", {}, diet->note));
    }
    return all;
}

}  // namespace standin
