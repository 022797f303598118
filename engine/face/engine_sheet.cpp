#include "core/contains.hpp"
#include "evaluate/checked_request.hpp"
#include "face/cooked_through.hpp"
#include "face/inside.hpp"
#include "face/kitchen_notes.hpp"
#include "standin/engine.hpp"
#include "worksheet/sheet.hpp"

namespace standin {
namespace {

// What the list says of a food goes for the formula's line of it.
Formula as_listed(Formula formula, const std::optional<Inventory>& have) {
    if (!have) return formula;
    const auto add = [](auto& all, const auto& more) {
        for (const auto& one : more)
            if (!contains(all, one)) all.push_back(one);
    };
    for (auto& line : formula.lines)
        for (const auto& item : have->items)
            if (item.ingredient == line.ingredient) {
                add(line.declared, item.declared);
                add(line.notes, item.told);
            }
    return formula;
}

}  // namespace

Result<Sheet> Engine::sheet(const Formula& written, const SheetRequest& request, const Setting& setting) const {
    const Formula formula = as_listed(written, request.have);
    const auto options = inside_->asked(setting);
    if (!options) return Failure(options.error());
    const auto checked = cooked_through(formula, inside_->knowledge, options->rules);
    if (!checked) return Failure(checked.error());
    if (auto wrong = as_error(faults_in(request), Trouble::usage)) return Failure(std::move(*wrong));
    const auto evaluator = inside_->evaluator_for(formula);
    auto sheet = sheet_of(*checked, request, *evaluator, options->rules);
    if (sheet && request.have)
        for (const auto& note : request.have->notes) sheet->prediction.read_as.push_back(note);
    if (sheet)
        for (auto& note : kitchen_notes(inside_->kitchen, {&formula}, *evaluator)) sheet->prediction.read_as.push_back(std::move(note));
    return sheet;
}

}  // namespace standin
