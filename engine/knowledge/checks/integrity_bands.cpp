#include <unordered_map>

#include "knowledge/checks/integrity.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

// How narrow a band may be when nobody measured it, and how wide any band may be before it says nothing. For a pH both are differences,
// else they are high / low. Judgement throughout: nobody guesses a pigment to a tenth either way, or a pH to a tenth.
struct Bounds {
    double narrowest = 1.2, widest = 30;
    bool difference = false;
};
constexpr Bounds doses{}, waste{1.05, 30}, acidity{0.25, 2, true};

std::string shown(const Band& b) { return figures_text(b.mid, 4) + " (" + figures_text(b.low, 4) + "-" + figures_text(b.high, 4) + ")"; }

class Bands {
public:
    explicit Bands(const Records& records) : records_(records) {
        for (const auto& source : records.sources) kinds_.emplace(source.id, source.kind);
    }

    std::vector<Doubt> run() && {
        for (const auto& i : records_.ingredients) look_at(i);
        std::vector<Doubt> all;
        for (auto* kind : {&disordered_, &bare_, &narrow_, &wide_})
            for (auto& doubt : *kind) all.push_back(std::move(doubt));
        return all;
    }

private:
    void look_at(const Ingredient& i) {
        const auto look = [&](const char* what, const std::optional<Quantity>& q, const Bounds& bounds) {
            if (q) judge(i, what, *q, bounds);
        };
        look("chlorophyll", i.chlorophyll, doses);
        look("capsaicinoids", i.capsaicinoids, doses);
        look("edible", i.edible, waste);
        if (i.acidity) {
            look("pH", i.acidity->ph, acidity);
            look("titratable", i.acidity->titratable, doses);
        }
        if (i.meat) judge(i, "bind", i.meat->bind, doses);
        if (i.binding) {
            judge(i, "water bound", i.binding->water, doses);
            judge(i, "fat bound", i.binding->fat, doses);
            look("swells", i.binding->swells, doses);
        }
    }

    bool measured(const std::string& source) const {
        const auto kind = kinds_.find(source.substr(0, source.find('#')));
        return kind != kinds_.end() && (kind->second == SourceKind::published || kind->second == SourceKind::common_practice);
    }

    void judge(const Ingredient& i, const char* what, const Quantity& q, const Bounds& bounds) {
        const Band& b = q.band;
        const auto doubt = [&](std::vector<Doubt>& to, std::string_view kind, std::string_view says) {
            to.push_back({kind, says, "ingredient " + i.id, i.id + ", " + what, shown(b) + " " + q.unit + ", source " + q.source});
        };
        if (b.low > b.mid || b.mid > b.high) return doubt(disordered_, "band-out-of-order", "values outside their own band");
        constexpr double slack = 1e-9;
        const bool exact = b.low == b.high;
        if (exact && b.mid == 0) return;
        if (exact && measured(q.source)) return;
        if (exact) return doubt(bare_, "band-missing", "values that nobody measured, without a band");
        if (!bounds.difference && b.low <= 0) return;  // may be none at all: no ratio to judge
        const double width = bounds.difference ? b.high - b.low : b.high / b.low;
        if (width < bounds.narrowest - slack && !measured(q.source))
            doubt(narrow_, "band-narrow", "bands narrower than memory or judgement supports");
        if (width > bounds.widest + slack) doubt(wide_, "band-wide", "bands so wide that they say little");
    }

    const Records& records_;
    std::unordered_map<std::string, SourceKind> kinds_;
    std::vector<Doubt> disordered_, bare_, narrow_, wide_;
};

}  // namespace

std::vector<Doubt> doubts_about_bands(const Records& records) { return Bands(records).run(); }

}  // namespace standin
