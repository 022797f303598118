// The library in another program: open the knowledge, read a formula, predict it, adapt it. Usage: predict_and_adapt FORMULA WANT
#include <fstream>
#include <iostream>
#include <iterator>

#include "standin/engine.hpp"

namespace {

int complain(const standin::Error& error) {
    std::cerr << error.where << ": " << error.message << "\n";
    return 1;
}

}  // namespace

int main(int argc, char** argv) {
    if (argc != 3) return complain({standin::Trouble::usage, "expected a formula and a want, such as firmer", argv[0], {}});
    std::ifstream file(argv[1], std::ios::binary);
    const std::string text(std::istreambuf_iterator<char>(file), {});

    const auto engine = standin::Engine::open({});
    if (!engine) return complain(engine.error());
    const auto formula = engine->read_formula(text, argv[1]);
    if (!formula) return complain(formula.error());
    const auto prediction = engine->predict(*formula);
    if (!prediction) return complain(prediction.error());
    const standin::Band& ph = prediction->properties[standin::Property::ph];
    std::cout << prediction->title << ": pH " << ph.mid << " (" << ph.low << "-" << ph.high << "), " << prediction->bind_word << "\n";
    for (const auto& caution : prediction->cautions) std::cout << "! " << caution.text << "\n";

    standin::AdaptRequest request;
    request.wants = {argv[2]};
    const auto answer = engine->adapt(*formula, request);
    if (!answer) return complain(answer.error());
    for (const auto& variant : answer->variants) std::cout << variant.rank << ". " << variant.table << "\n";
    return answer->variants.empty() ? 1 : 0;
}
