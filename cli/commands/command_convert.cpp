#include <iostream>
#include <optional>
#include <utility>

#include "conversation/conversation.hpp"
#include "render/json/json.hpp"
#include "render/sentences.hpp"
#include "render/text/text.hpp"
#include "render/told_beside.hpp"
#include "session.hpp"
#include "terminal.hpp"

namespace standin::cli {
namespace {

// What was understood, line by line. It is the answer even where something is asked back; the exit code says so.
int report(const Call& call, const Engine& engine) {
    const auto text = read_text(call.operands.front());
    if (!text) return complain(text.error(), call.colour);
    if (engine.is_stock(*text, shown_name(call.operands.front()))) {
        const auto stock = engine.read_inventory(*text, shown_name(call.operands.front()));
        if (!stock) return complain(stock.error(), call.colour);
        return deliver(call.json ? stock_json(*stock) : stock_text(*stock, look_for_output(call.colour)));
    }
    const auto reading = engine.read_closely(*text, shown_name(call.operands.front()));
    if (!reading) return complain(reading.error(), call.colour);
    std::optional<Prediction> predicted;
    if (reading->formula)
        if (auto made = engine.predict(*reading->formula)) predicted = std::move(*made);
    if (call.json) return deliver(reading_json(*reading, predicted ? &*predicted : nullptr), reading->formula ? done : bad_data);
    const Look look = look_for_output(call.colour);
    std::string page = reading_text(*reading, look);
    if (predicted) page += reading_dangers_text(*predicted, look);
    return deliver(page, reading->formula ? done : bad_data);
}

// What leaves for other kitchens says how hot the middle must be, whatever its method says.
Formula with_its_core(const Engine& engine, Formula formula) {
    const auto predicted = engine.predict(formula);
    if (predicted && formula.process.core_c.value_or(0) < predicted->core.core_c) formula.process.core_c = predicted->core.core_c;
    return formula;
}

ToldBeside told_of(const Engine& engine, const Formula& formula) {
    const auto predicted = engine.predict(formula);
    return predicted ? told_beside(*predicted) : ToldBeside{};
}

std::string written(const Call& call, const Engine& engine, const Formula& formula, const ToldBeside& told) {
    std::string text = call.to == "json"     ? with_told_json(engine.formula_json(formula), told)
                       : call.to == "jsonld" ? with_told_jsonld(engine.formula_jsonld(with_its_core(engine, formula)), told)
                                             : with_told(engine.formula_text(formula), told);
    if (text.empty() || text.back() != '\n') text += '\n';
    return text;
}

// What its words say that must be minded is told beside it too, with its allergens, for who does not look into the file.
void tell_dangers(const ToldBeside& told) {
    for (const auto& caution : told.of_words) std::cerr << "standin: mind: " << caution << "\n";
    if (told.of_words.empty()) return;
    for (const auto& allergen : told.allergens) std::cerr << "standin: allergen: " << allergen << "\n";
}

bool is_json(const std::string& path) { return path.size() > 5 && path.compare(path.size() - 5, 5, ".json") == 0; }

// Questions and answers, then the formula. Answers that end too early leave the page that there is without them.
int ask(const Call& call, const Engine& engine) {
    const auto& path = call.operands.front();
    if (path == "-") return complain({Trouble::usage, "--ask takes its answers from standard input: name a file", {}, {}}, call.colour);
    const auto text = read_text(path);
    if (!text) return complain(text.error(), call.colour);
    const auto talked = talk_over(*text, shown_name(path), engine, std::cin, std::cerr, look_for_errors(call.colour));
    if (talked.broken_off) {
        std::cerr << "\n";
        return report(call, engine);
    }
    const auto formula = engine.read_formula(talked.text, shown_name(path));
    if (!formula) return complain(formula.error(), call.colour);
    Call as = call;
    if (as.to.empty() && (call.json || is_json(call.save))) as.to = "json";
    const ToldBeside told = told_of(engine, *formula);
    const std::string out = written(as, engine, *formula, told);
    tell_dangers(told);
    if (call.save.empty()) return deliver(out);
    return deliver(call, {call.save == "-" ? "" : "Written to " + call.save + ". Next: standin predict " + call.save + "\n", {}, out});
}

}  // namespace

int run_convert(const Call& call) {
    if (call.json && !call.to.empty() && call.to != "json")
        return complain({Trouble::usage, "--json and --to " + call.to + " contradict each other", {}, {}}, call.colour);
    auto engine = open_engine(call);
    if (!engine) return complain(engine.error(), call.colour);
    if (call.ask) return ask(call, *engine);
    if (!call.save.empty()) return complain({Trouble::usage, "--save goes with --ask; else write to a file with >", {}, {}}, call.colour);
    if (call.to.empty()) return report(call, *engine);
    const auto formula = load_formula(*engine, call.operands.front(), call);
    if (!formula) return complain(formula.error(), call.colour);
    const ToldBeside told = told_of(*engine, *formula);
    tell_dangers(told);
    return deliver(written(call, *engine, *formula, told));
}

}  // namespace standin::cli
