#include "standin/narrate.hpp"

namespace standin {
namespace {

void turn(std::string& sentence, Units units) { sentence = in_units(sentence, units); }

void turn(std::vector<std::string>& sentences, Units units) {
    for (auto& sentence : sentences) turn(sentence, units);
}

void turn(std::vector<CautionText>& cautions, Units units) {
    for (auto& c : cautions) {
        if (is_told(c.reason)) c.text = in_full(c.reason, units);
        else turn(c.text, units);
        turn(c.brief, units);
    }
}

void turn(PageSafety& page, Units units) { turn(page.cautions, units); }

void turn(Prediction& p, Units units) {
    if (p.green_life) p.green_life->says = in_full(p.green_life->reason, units);
    if (p.lethality) p.lethality->says = in_full(p.lethality->reason, units);
    turn(p.cautions, units);
}

void turn(Edit& e, Units units) {
    e.why = in_brief(e.reason, units);
    if (e.kind == EditKind::process) e.with = to_do(e.does, units);
}

void turn(Variant& v, Units units) {
    for (auto& edit : v.edits) turn(edit, units);
    for (auto& want : v.wants) want.says = in_full(want.reason, units);
    turn(v.table, units);
    turn(v.prediction, units);
    turn(v.new_cautions, units);
}

void turn(std::vector<Excluded>& all, Units units) {
    for (auto& one : all) {
        one.note.clear();
        for (const auto& note : one.notes) one.note += (one.note.empty() ? "" : " ") + in_full(note, units);
    }
}

}  // namespace

Prediction told_in(Prediction p, Units units) {
    turn(p, units);
    return p;
}

AdaptAnswer told_in(AdaptAnswer a, Units units) {
    turn(a.base, units);
    for (auto& variant : a.variants) turn(variant, units);
    turn(a.on_page, units);
    turn(a.of_variants, units);
    for (auto& one : a.presumed) turn(one.says, units);
    turn(a.excluded, units);
    if (a.scaled) a.scaled->says = in_full(a.scaled->reason, units);
    return a;
}

SwapsAnswer told_in(SwapsAnswer a, Units units) {
    for (auto& s : a.stand_ins) {
        turn(s.note, units);
        s.dose = in_full(s.dose_reason, units);
        if (s.partner) s.partner->why = in_full(s.partner->reason, units);
        turn(s.needs, units);
        turn(s.cautions, units);
    }
    turn(a.cautions, units);
    turn(a.excluded, units);
    turn(a.on_page, units);
    return a;
}

CompareAnswer told_in(CompareAnswer a, Units units) {
    for (auto& p : a.formulas) turn(p, units);
    turn(a.on_page, units);
    return a;
}

WhyAnswer told_in(WhyAnswer a, Units units) {
    turn(a.prediction, units);
    for (auto& unknown : a.unknowns) unknown.advice = how_to_know(unknown.reason, units);
    return a;
}

Sheet told_in(Sheet s, Units units) {
    turn(s.prediction, units);
    s.scaled = in_full(s.scaling, units);
    for (auto& step : s.steps) step = told_in(std::move(step), units);
    turn(s.core_rule, units);
    return s;
}

LookupAnswer told_in(LookupAnswer a, Units units) {
    for (auto& food : a.matches) {
        for (auto* sentence : {&food.note, &food.storage, &food.stand_in}) turn(*sentence, units);
        turn(food.cautions, units);
        for (auto* swaps : {&food.swaps_out, &food.swaps_in})
            for (auto& swap : *swaps) {
                turn(swap.note, units);
                turn(swap.needs, units);
            }
    }
    return a;
}

MendAnswer told_in(MendAnswer a, Units units) {
    turn(a.base, units);
    for (auto& word : a.words) {
        turn(word.says, units);
        turn(word.practice, units);
    }
    for (auto& cause : a.causes)
        for (auto* sentence : {&cause.says, &cause.first, &cause.does}) turn(*sentence, units);
    turn(a.discard, units);
    for (auto& way : a.ways) {
        for (auto* all : {&way.add, &way.plain})
            for (auto& in : *all) turn(in.how, units);
        turn(way.prediction, units);
        turn(way.new_cautions, units);
    }
    for (auto* sentences : {&a.fold, &a.plain}) turn(*sentences, units);
    for (auto& one : a.presumed) turn(one.says, units);
    turn(a.excluded, units);
    turn(a.on_page, units);
    turn(a.of_variants, units);
    return a;
}

PlanAnswer told_in(PlanAnswer a, Units units) {
    for (auto& sausage : a.sausages) {
        for (auto& edit : sausage.edits) turn(edit, units);
        turn(sausage.prediction, units);
    }
    for (auto& left : a.left) turn(left.storage, units);
    for (auto& one : a.presumed) turn(one.says, units);
    turn(a.on_page, units);
    return a;
}

}  // namespace standin
