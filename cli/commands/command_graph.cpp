#include "render/json/json.hpp"
#include "session.hpp"

namespace standin::cli {

int run_graph(const Call& call) {
    auto engine = open_engine(call);
    if (!engine) return complain(engine.error(), call.colour);
    std::string word;
    for (const auto& part : call.operands) word += (word.empty() ? "" : " ") + part;
    const auto graph = engine->graph(word, call.role);
    if (!graph) return complain(graph.error(), call.colour);
    return deliver(call.json ? graph_json(*graph) : *graph);
}

}  // namespace standin::cli
