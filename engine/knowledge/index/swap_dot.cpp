#include "knowledge/index/swap_dot.hpp"

#include <algorithm>
#include <array>
#include <map>

#include "core/words.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

// How a role is drawn: the shape of the ingredients that are mainly there for it, their fill, the ink of its arrows.
struct Style {
    std::string_view shape, fill, ink;
};
constexpr std::array<Style, role_count> styles{{
    {"box", "#f3d9d4", "#8c3b2f"},            // lean
    {"box3d", "#fbf3df", "#8a7440"},          // fat
    {"ellipse", "#dcedd0", "#3f7a2c"},        // green
    {"invtrapezium", "#f9d3c8", "#b3361b"},   // heat
    {"diamond", "#f6f1bf", "#7d7410"},        // acid
    {"hexagon", "#ece4d6", "#6f5f48"},        // binder
    {"house", "#ead9c4", "#7a5326"},          // nut
    {"octagon", "#d5ecdf", "#26735a"},        // herb
    {"parallelogram", "#eadff0", "#6d4485"},  // allium
    {"trapezium", "#f4ddc0", "#a05a12"},      // spice
    {"pentagon", "#e6e9ec", "#555f69"},       // salt
    {"egg", "#d6e6f2", "#2f6590"},            // liquid
    {"invhouse", "#f7dbe6", "#98386a"},       // sweet
}};

const Style& style(Role role) { return styles[static_cast<std::size_t>(role)]; }

// Text between quotes.
std::string dot_quoted(std::string_view text) {
    std::string out = "\"";
    for (const char c : text) {
        if (c == '"' || c == '\\') out += '\\';
        out += c == '\n' ? ' ' : c;
    }
    return out + "\"";
}

class Drawing {
public:
    Drawing(const Records& records, const Ingredient* centre, std::optional<Role> role) : centre_(centre), role_(role) {
        for (const auto& i : records.ingredients) ingredients_.emplace(i.id, &i);
        for (const auto& p : records.preparations) preparations_.emplace(p.id, p.names.empty() ? p.id : p.names.front());
        for (const auto& s : records.swaps)
            if (!s.any() && (!role || s.role == *role) && (!centre || s.from == centre->id || s.to == centre->id)) swaps_.push_back(&s);
    }

    std::string text() && {
        if (swaps_.empty()) return "";
        std::string arrows;
        for (const auto* s : swaps_) arrows += arrow(*s);
        std::string nodes;
        for (const auto& [id, ingredient] : ingredients_)
            if (met_[id]) nodes += node(*ingredient);
        return head() + nodes + arrows + "}\n";
    }

private:
    std::string head() const {
        std::string title = centre_ ? "Stand-ins of " + centre_->names.front() : "Stand-ins";
        if (role_) title += ", role " + std::string(spelling(*role_));
        const std::string key =
            "An arrow leads to what can stand in; 1.00 is no difference. Dashed: prepared as it says. Shape and fill: what it is mainly "
            "there for.";
        std::string out = "digraph standin {\n";
        out += "  graph [label=" + dot_quoted(title) + ", labelloc=t, tooltip=" + dot_quoted(key) +
               ", bgcolor=white, fontname=\"sans-serif\", fontsize=18, ";
        // A neighbourhood reads in columns; anything bigger is laid out by springs, which stays quick with thousands of arrows.
        out += centre_ ? "layout=dot, rankdir=LR, nodesep=0.12, ranksep=1.6]\n"
                       : "layout=sfdp, K=1.2, overlap=prism, overlap_scaling=4, outputorder=edgesfirst]\n";
        out +=
            "  node [style=filled, color=\"#5b5b5b\", penwidth=0.8, fontname=\"sans-serif\", fontsize=11, margin=\"0.08,0.04\", "
            "height=0.3]\n";
        out += "  edge [fontname=\"sans-serif\", fontsize=8, arrowsize=0.6]\n";
        return out + "  // " + key + "\n";
    }

    static std::string node(const Ingredient& i) {
        return "  " + dot_quoted(i.id) + " [label=" + dot_quoted(i.names.front()) + ", shape=" + look(i) + "]\n";
    }

    static std::string look(const Ingredient& i) {
        std::vector<std::string> roles;
        for (const auto role : i.roles) roles.emplace_back(spelling(role));
        const Style& s = style(i.roles.front());
        return std::string(s.shape) + ", fillcolor=\"" + std::string(s.fill) + "\", tooltip=" + dot_quoted(i.family + "; " + listed(roles));
    }

    // The same swap the other way round, if it says the same: one arrow with two heads does for both.
    const Swap* twin(const Swap& s) const {
        if (!s.prepared.empty() || s.from == s.to) return nullptr;
        const auto same = [&](const Swap* o) {
            return o->role == s.role && o->from == s.to && o->to == s.from && o->prepared.empty() && o->closeness == s.closeness &&
                   o->needs == s.needs;
        };
        const auto found = std::find_if(swaps_.begin(), swaps_.end(), same);
        return found == swaps_.end() ? nullptr : *found;
    }

    std::string arrow(const Swap& s) {
        met_[s.from] = met_[s.to] = true;
        const bool both = twin(s) != nullptr;
        if (both && (centre_ ? s.from != centre_->id : s.to < s.from)) return "";  // drawn from the other end
        std::string label = fixed_text(s.closeness, 2);
        std::vector<std::string> steps;
        for (const auto& step : s.prepared) {
            const auto known = preparations_.find(step);
            steps.push_back(known == preparations_.end() ? step : known->second);
        }
        if (!steps.empty()) label += " " + listed(steps);
        if (!s.needs.empty()) label += " (" + listed(s.needs) + ")";
        const std::string about = std::string(spelling(s.role)) + (s.note.empty() ? "" : ": " + s.note);
        std::string out = "  " + dot_quoted(s.from) + " -> " + dot_quoted(s.to) + " [label=" + dot_quoted(label) + ", color=\"" +
                          std::string(style(s.role).ink) + "\", fontcolor=\"" + std::string(style(s.role).ink);
        out += "\", penwidth=" + fixed_text(0.4 + 1.8 * s.closeness, 1) + ", tooltip=" + dot_quoted(about);
        if (both) out += ", dir=both";
        if (!steps.empty()) out += ", style=dashed";
        return out + "]\n";
    }

    const Ingredient* centre_;
    std::optional<Role> role_;
    std::map<std::string, const Ingredient*> ingredients_;
    std::map<std::string, std::string> preparations_;
    std::map<std::string, bool> met_;
    std::vector<const Swap*> swaps_;
};

}  // namespace

std::string swap_dot(const Records& records, const Ingredient* centre, std::optional<Role> role) {
    return Drawing(records, centre, role).text();
}

}  // namespace standin
