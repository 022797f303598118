#include "mend/cause_foods.hpp"

#include <algorithm>

#include "core/contains.hpp"
#include "knowledge/index/effects.hpp"

namespace standin {
namespace {

// Judgement, all of them.
constexpr double note_of_itself = 0.5;  // intensity from which a food is called bitter
constexpr double note_share = 0.07;     // of all of that note in the mass
constexpr double enzyme_share = 0.1;    // of all that digests
constexpr double watery = 0.8;          // of a liquid, which cream is not
constexpr double acid_share = 0.2;      // of all acid
constexpr double wet_share = 0.015;     // of the mass: water of one line that squeezing takes

using Lines = std::vector<std::size_t>;

template <class Which>
Lines lines_that(const Formula& mass, Which which) {
    Lines all;
    for (std::size_t l = 0; l < mass.lines.size(); ++l)
        if (which(l)) all.push_back(l);
    return all;
}

}  // namespace

bool counts_as(const Ingredient& food, Role role) {
    const Role main = food.roles.front();
    return main == role || (role == Role::herb && main == Role::green && contains(food.roles, role));
}

bool brings_note(const Ingredient& food, AromaNote note) {
    return std::any_of(food.aroma.begin(), food.aroma.end(),
                       [&](const AromaShare& share) { return share.note == note && share.intensity >= note_of_itself; });
}

Lines lines_of_note(AromaNote note, const Formula& mass, const NominalBatch& batch, const Knowledge& knowledge) {
    const double all = batch.total()[note];
    return lines_that(mass, [&](std::size_t l) {
        return brings_note(*knowledge.ingredient(mass.lines[l].ingredient), note) && all > 0 && batch.part(l)[note] >= note_share * all;
    });
}

Lines unsqueezed_lines(const Formula& mass, const NominalBatch& batch, const Knowledge& knowledge) {
    const Preparation* squeezing = knowledge.preparation("squeezed");
    return lines_that(mass, [&](std::size_t l) {
        const Ingredient& food = *knowledge.ingredient(mass.lines[l].ingredient);
        if (!squeezing || food.meat || food.roles.front() == Role::herb || has_step(mass.lines[l].prepared, "squeezed")) return false;
        // Raw leaf keeps its water in its cells.
        const bool leaf = food.tissue == Tissue::thin_leaf || food.tissue == Tissue::thick_leaf;
        if (leaf && mass.lines[l].prepared.empty()) return false;
        const PreparationEffect* effect = effect_on(*squeezing, food.tissue);
        if (!effect || effect->yield.empty()) return false;
        const double takes = 1 - at_minutes(effect->yield, {}).mid;
        return takes * batch.part(l)[Amount::paste_water] >= wet_share * batch.total()[Amount::mass];
    });
}

Lines poured_lines(const Formula& mass, const NominalBatch& batch, const Knowledge& knowledge) {
    return lines_that(mass, [&](std::size_t l) {
        const Ingredient& food = *knowledge.ingredient(mass.lines[l].ingredient);
        const Material& part = batch.part(l);
        return food.roles.front() == Role::liquid && !food.meat && part[Amount::water] > watery * part[Amount::mass];
    });
}

std::optional<Lines> lines_of(const CauseOfTaste& cause, const Formula& mass, const NominalBatch& batch, const Knowledge& knowledge) {
    Lines lines;
    const Material& total = batch.total();
    if (cause.protease_above) {
        if (!(total.share(Amount::protease, 1000) > *cause.protease_above)) return std::nullopt;
        lines = lines_that(mass, [&](std::size_t l) { return batch.part(l)[Amount::protease] >= enzyme_share * total[Amount::protease]; });
        std::stable_sort(lines.begin(), lines.end(),
                         [&](std::size_t a, std::size_t b) { return batch.part(a)[Amount::protease] > batch.part(b)[Amount::protease]; });
    } else if (cause.note) {
        lines = lines_of_note(*cause.note, mass, batch, knowledge);
        const auto of_other_role = [&](std::size_t l) {
            return !contains(cause.roles, knowledge.ingredient(mass.lines[l].ingredient)->roles.front());
        };
        if (!cause.roles.empty()) lines.erase(std::remove_if(lines.begin(), lines.end(), of_other_role), lines.end());
        std::stable_sort(lines.begin(), lines.end(),
                         [&](std::size_t a, std::size_t b) { return batch.part(a)[*cause.note] > batch.part(b)[*cause.note]; });
    } else if (cause.acids) {
        lines = lines_that(mass, [&](std::size_t l) { return batch.part(l)[Amount::titratable] > acid_share * total[Amount::titratable]; });
    } else if (cause.unsqueezed) {
        lines = unsqueezed_lines(mass, batch, knowledge);
    } else if (cause.poured) {
        lines = poured_lines(mass, batch, knowledge);
    } else if (!cause.roles.empty()) {
        lines = lines_that(
            mass, [&](std::size_t l) { return contains(cause.roles, knowledge.ingredient(mass.lines[l].ingredient)->roles.front()); });
    } else {
        return lines;
    }
    double grams = 0;
    for (const auto l : lines) grams += batch.part(l)[Amount::mass];
    if (lines.empty() || (cause.share_above && 100 * grams <= *cause.share_above * total[Amount::mass])) return std::nullopt;
    return lines;
}

}  // namespace standin
