#include "knowledge/index/swap_graph.hpp"

#include <algorithm>
#include <boost/graph/adjacency_list.hpp>
#include <boost/graph/dijkstra_shortest_paths.hpp>
#include <boost/graph/filtered_graph.hpp>
#include <functional>
#include <map>
#include <string>
#include <tuple>
#include <unordered_map>

#include "core/contains.hpp"

namespace standin {
namespace {

// Layers make the limit of two swaps part of the graph: a vertex is an ingredient after 0, 1 or 2 swaps, and every swap leads one
// layer up. Dijkstra over products of closeness in (0, 1] then finds the closest path of each length.
constexpr std::size_t layers = 3;

struct SwapEdge {
    std::size_t swap = 0;
    double closeness = 0;
    Role role = Role::green;
};

using Graph = boost::adjacency_list<boost::vecS, boost::vecS, boost::directedS, boost::no_property, SwapEdge>;
using Vertex = boost::graph_traits<Graph>::vertex_descriptor;
using EdgeOf = boost::graph_traits<Graph>::edge_descriptor;

struct InRole {
    const Graph* graph = nullptr;
    Role role = Role::green;
    bool operator()(const EdgeOf& edge) const { return (*graph)[edge].role == role; }
};

struct Reached {
    std::vector<double> closeness;
    std::vector<std::size_t> by;  // the swap that led here
};

class Recorder : public boost::dijkstra_visitor<> {
public:
    explicit Recorder(Reached& reached) : reached_(&reached) {}
    template <class G>
    void edge_relaxed(EdgeOf edge, const G& graph) {
        reached_->by[target(edge, graph)] = graph[edge].swap;
    }

private:
    Reached* reached_;
};

}  // namespace

struct SwapGraph::Inside {
    explicit Inside(const Knowledge& known)
        : knowledge(&known), ingredients(known.records().ingredients.size()), graph(ingredients * layers) {}

    const Knowledge* knowledge;
    std::size_t ingredients;
    std::unordered_map<std::string_view, std::size_t> index;
    std::map<Role, std::size_t> any;                       // the swap that holds for all foods of a role
    std::multimap<std::size_t, std::size_t> in_two_parts;  // swaps with a partner, by the ingredient they replace
    Graph graph;                                           // built in place: copying one trips a warning inside Boost 1.74

    Vertex vertex(std::size_t ingredient, std::size_t layer) const { return layer * ingredients + ingredient; }
};

SwapGraph::SwapGraph(const Knowledge& knowledge) : inside_(std::make_unique<Inside>(knowledge)) {
    const Records& records = knowledge.records();
    auto& index = inside_->index;
    for (std::size_t i = 0; i < records.ingredients.size(); ++i) index.emplace(records.ingredients[i].id, i);
    for (std::size_t s = 0; s < records.swaps.size(); ++s) {
        const Swap& swap = records.swaps[s];
        if (swap.any()) {
            inside_->any.emplace(swap.role, s);
            continue;
        }
        if (swap.partner) {  // its weights are those of this pair: nothing leads on from it
            inside_->in_two_parts.emplace(index.at(swap.from), s);
            continue;
        }
        for (std::size_t layer = 0; layer + 1 < layers; ++layer)
            boost::add_edge(inside_->vertex(index.at(swap.from), layer), inside_->vertex(index.at(swap.to), layer + 1),
                            SwapEdge{s, swap.closeness, swap.role}, inside_->graph);
    }
}

SwapGraph::SwapGraph(SwapGraph&&) noexcept = default;
SwapGraph::~SwapGraph() = default;

std::vector<SwapPath> SwapGraph::from(Role role, std::size_t ingredient) const {
    const auto& all = *inside_;
    const auto& swaps = all.knowledge->records().swaps;
    const std::size_t vertices = all.ingredients * layers;
    Reached reached{std::vector<double>(vertices), std::vector<std::size_t>(vertices)};
    const boost::filtered_graph<Graph, InRole> in_role(all.graph, InRole{&all.graph, role});
    boost::dijkstra_shortest_paths(
        in_role, all.vertex(ingredient, 0),
        boost::weight_map(boost::get(&SwapEdge::closeness, in_role))
            .distance_map(boost::make_iterator_property_map(reached.closeness.begin(), boost::get(boost::vertex_index, in_role)))
            .distance_compare(std::greater<double>())
            .distance_combine(std::multiplies<double>())
            .distance_inf(0.0)
            .distance_zero(1.0)
            .visitor(Recorder(reached)));

    // A stand-in reached directly and by two swaps keeps its closest path; each way of preparing it, and each partner, stands for itself.
    using Key = std::tuple<std::size_t, std::vector<std::string>, std::string>;
    std::map<Key, SwapPath> best;
    const auto offer = [&](SwapPath path) {
        const Swap& last = swaps[path.swaps.back()];
        if (path.to == ingredient && (path.swaps.size() > 1 || last.prepared.empty())) return;
        auto& held = best[{path.to, last.prepared, last.partner ? last.partner->ingredient : ""}];
        if (path.closeness > held.closeness) held = std::move(path);
    };
    // Dijkstra tells the closest way to every ingredient after one swap; from there each swap leads to a form of its own.
    const auto out_of = [&](Vertex from, auto visit) {
        const auto [first, last] = boost::out_edges(from, all.graph);
        for (auto edge = first; edge != last; ++edge)
            if (all.graph[*edge].role == role) visit(all.graph[*edge], boost::target(*edge, all.graph) % all.ingredients);
    };
    out_of(all.vertex(ingredient, 0), [&](const SwapEdge& swap, std::size_t to) { offer({to, swap.closeness, {swap.swap}}); });
    for (std::size_t between = 0; between < all.ingredients; ++between) {
        const Vertex middle = all.vertex(between, 1);
        if (!(reached.closeness[middle] > 0)) continue;
        out_of(middle, [&](const SwapEdge& swap, std::size_t to) {
            offer({to, reached.closeness[middle] * swap.closeness, {reached.by[middle], swap.swap}});
        });
    }
    const auto [first, last] = all.in_two_parts.equal_range(ingredient);
    for (auto pair = first; pair != last; ++pair) {
        const Swap& swap = swaps[pair->second];
        if (swap.role == role) offer({all.index.at(swap.to), swap.closeness, {pair->second}});
    }
    std::vector<SwapPath> paths;
    for (auto& [key, path] : best) paths.push_back(std::move(path));
    std::stable_sort(paths.begin(), paths.end(), [](const SwapPath& a, const SwapPath& b) { return a.closeness > b.closeness; });
    return paths;
}

std::optional<SwapPath> SwapGraph::any(Role role, std::size_t ingredient, std::size_t to) const {
    const auto& foods = inside_->knowledge->records().ingredients;
    const auto found = inside_->any.find(role);
    if (found == inside_->any.end() || to == ingredient || !contains(foods[to].roles, role)) return std::nullopt;
    return SwapPath{to, inside_->knowledge->records().swaps[found->second].closeness, {found->second}};
}

}  // namespace standin
