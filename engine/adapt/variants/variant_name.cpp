#include "adapt/variants/variant_name.hpp"

#include <algorithm>
#include <string_view>

namespace standin {
namespace {

constexpr std::size_t most_named = 3;

void add_new(std::vector<std::string>& all, const std::string& one) {
    if (!one.empty() && std::find(all.begin(), all.end(), one) == all.end()) all.push_back(one);
}

// "chard and jalapeño", "chard, jalapeño, mint and 2 more".
std::string counted(const std::vector<std::string>& all) {
    std::string text;
    const std::size_t shown = all.size() > most_named + 1 ? most_named : all.size();
    for (std::size_t i = 0; i < shown; ++i) text += (i == 0 ? "" : i + 1 == all.size() ? " and " : ", ") + all[i];
    return text + (shown < all.size() ? " and " + std::to_string(all.size() - shown) + " more" : "");
}

constexpr std::string_view another = "In place of ";

std::string as_another(const std::string& title) { return title.starts_with(another) ? title : std::string(another) + title; }

// A variant of a variant keeps the first part of its name once.
std::string stem(const Formula& base) {
    if (base.parent.empty()) return base.title;
    return base.title.starts_with(another) ? as_another(base.parent) : base.parent;
}

// "bind>=40" is what a machine is told; a name says it in a word or not at all.
std::vector<std::string> wants_in_words(std::vector<std::string> wants) {
    std::erase_if(wants, [](const std::string& want) { return want.find_first_of("<>=") != std::string::npos; });
    return wants;
}

std::string subproblem(const std::string& food, const std::string& note, const std::vector<std::string>& asks) {
    std::string text;
    for (const auto& ask : asks) text += (text.empty() ? "" : "; ") + ask;
    if (!note.empty()) text += (text.empty() ? "" : ". ") + note;
    return text.empty() ? "" : food + ": " + text;
}

}  // namespace

void name_variant(Formula& variant, const Formula& base, const std::vector<Edit>& edits, const std::vector<std::string>& wants,
                  const Knowledge& knowledge) {
    std::vector<std::string> in, out;
    for (const auto& edit : edits) {
        const bool brings = edit.kind == EditKind::replace || edit.kind == EditKind::split || edit.kind == EditKind::add;
        if (brings) {
            const std::string name = knowledge.ingredient(edit.with)->names.front();
            add_new(in, name);
            add_new(variant.to_do, subproblem(name, edit.reason.note, edit.reason.asks));
        } else if (edit.kind == EditKind::omit) {
            add_new(out, knowledge.ingredient(edit.line)->names.front());
        }
    }
    std::string what = counted(wants_in_words(wants));
    if (!in.empty()) what += (what.empty() ? "with " : ", with ") + counted(in);
    else if (!out.empty()) what += (what.empty() ? "without " : ", without ") + counted(out);
    variant.title = stem(base) + ", " + (what.empty() ? "rebalanced" : what);
    variant.parent = base.title;
    variant.date.clear();
}

void name_as_another(Formula& variant) { variant.title = as_another(variant.title); }

void put_on_the_plate(Formula& variant, const std::vector<Reason>& gives_back) {
    const std::string mark = "plate: ";
    std::erase_if(variant.to_do, [&](const std::string& task) { return task.rfind(mark, 0) == 0; });
    const auto of_plate = [](const Reason& r) { return r.kind == ReasonKind::comes_back_outside || r.kind == ReasonKind::acid_to_hold; };
    for (const auto& reason : gives_back)
        if (of_plate(reason) && !reason.figures.empty()) variant.to_do.push_back(mark + in_full(reason));
}

void name_swapped(Formula& variant, const Formula& base, const StandIn& stand_in, const std::string& line) {
    variant.title = stem(base) + ", with " + stand_in.name + " for " + line;
    variant.parent = base.title;
    variant.date.clear();
    add_new(variant.to_do, subproblem(stand_in.name, stand_in.note, stand_in.needs));
    // What stands beside the stand-in was held while the rest followed it; that mark is not the maker's.
    for (std::size_t l = base.lines.size(); l < variant.lines.size(); ++l) variant.lines[l].keep = false;
}

}  // namespace standin
