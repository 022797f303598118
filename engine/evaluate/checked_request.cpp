#include "evaluate/checked_request.hpp"

#include "evaluate/faults.hpp"

namespace standin {
namespace {

constexpr std::size_t most_variants = 100;
constexpr auto asked_for = "what is asked for";

void check_words(Faults& faults, const std::vector<std::string>& words) {
    for (const auto& word : words) faults.text(word, asked_for);
}

void check_item(Faults& faults, const InventoryItem& item, const std::string& where, const Knowledge& knowledge) {
    faults.unless(knowledge.ingredient(item.ingredient), where + ": no ingredient has the id " + quoted(item.ingredient));
    if (item.grams) faults.within(*item.grams, 0, most_grams, where + ": grams of " + quoted(item.ingredient));
}

void check_list(Faults& faults, const Inventory& inventory, const Knowledge& knowledge) {
    for (const auto& item : inventory.items) check_item(faults, item, "on hand", knowledge);
    for (const auto& id : inventory.missing) faults.unless(knowledge.ingredient(id), "on hand: no ingredient has the id " + quoted(id));
    for (const auto& note : inventory.notes) faults.text(in_full(note), "on hand: a note");
    for (const auto& name : inventory.aside) faults.text(name, "on hand: what is set aside");
}

void check_number(Faults& faults, std::size_t top, double sure) {
    faults.unless(top <= most_variants, "no more than " + std::to_string(most_variants) + " variants can be asked for");
    faults.within(sure, 0, 1, "the share of the draws that counts as met");
}

}  // namespace

std::vector<std::string> faults_in(const Inventory& inventory, const Knowledge& knowledge) {
    Faults faults;
    check_list(faults, inventory, knowledge);
    return std::move(faults).all();
}

std::vector<std::string> faults_in(const AdaptRequest& request, const Knowledge& knowledge) {
    Faults faults;
    if (request.have) check_list(faults, *request.have, knowledge);
    for (const auto* words : {&request.wants, &request.without, &request.keep}) check_words(faults, *words);
    for (const auto& idea : request.use) check_words(faults, {idea.with, idea.line});
    for (const auto& item : request.most) check_item(faults, item, "at most", knowledge);
    for (const auto& item : request.least) check_item(faults, item, "at least", knowledge);
    faults.text(request.meat, asked_for);
    check_number(faults, request.top, request.sure);
    return std::move(faults).all();
}

std::vector<std::string> faults_in(const SwapsRequest& request, const Knowledge& knowledge) {
    Faults faults;
    if (request.have) check_list(faults, *request.have, knowledge);
    check_words(faults, request.without);
    return std::move(faults).all();
}

std::vector<std::string> faults_in(const MendRequest& request, const Knowledge& knowledge) {
    Faults faults;
    if (request.have) check_list(faults, *request.have, knowledge);
    for (const auto* words : {&request.tasted, &request.measured, &request.without}) check_words(faults, *words);
    faults.text(request.made, asked_for);
    check_number(faults, request.top, request.sure);
    return std::move(faults).all();
}

std::vector<std::string> faults_in(const PlanRequest& request, const Knowledge& knowledge) {
    Faults faults;
    check_list(faults, request.have, knowledge);
    check_words(faults, request.without);
    for (const auto& make : request.make) {
        faults.text(make.amount, asked_for);
        faults.unless(make.formula < request.formulas.size(), "a weight was asked of no formula");
    }
    return std::move(faults).all();
}

std::vector<std::string> faults_in(const SheetRequest& request) {
    Faults faults;
    for (const auto* text : {&request.meat, &request.total, &request.piece, &request.casing, &request.link}) faults.text(*text, asked_for);
    check_words(faults, request.only);
    return std::move(faults).all();
}

}  // namespace standin
