#include "knowledge/checks/integrity.hpp"

#include <algorithm>
#include <map>
#include <set>

#include "core/contains.hpp"
#include "knowledge/index/effects.hpp"
#include "knowledge/records/references.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

class Integrity {
public:
    explicit Integrity(const Records& records) : records_(records) {}

    std::vector<Doubt> run() && {
        orphans();
        sources();
        preparations();
        roles();
        for (auto& doubt : doubts_about_bands(records_)) doubts_.push_back(std::move(doubt));
        for (auto& doubt : doubts_about_kin(records_)) doubts_.push_back(std::move(doubt));
        detours();
        acids();
        conditions();
        seasons();
        compositions();
        return std::move(doubts_);
    }

private:
    void add(std::string_view kind, std::string_view says, std::string record, std::string about, std::string detail = {}) {
        doubts_.push_back({kind, says, std::move(record), std::move(about), std::move(detail)});
    }

    void orphans() {
        std::set<std::string_view> linked;
        for (const auto& s : records_.swaps) linked.insert({s.from, s.to});
        for (const auto& i : records_.ingredients)
            if (!linked.count(i.id)) add("orphan", "ingredients that no swap names", "ingredient " + i.id, i.id);
    }

    // A source is also used where a note names it, or where one worked out from it is cited ("bohn-2004-fit").
    void sources() {
        std::set<std::string> cited;
        for (const auto& reference : references_in(records_)) cited.insert(reference.source.substr(0, reference.source.find('#')));
        std::string notes;
        for (const auto& p : records_.parameters) notes += p.note + "\n";
        for (const auto& d : records_.perception) notes += d.note + "\n";
        for (const auto& s : records_.sources) notes += s.cite + "\n" + s.note + "\n";
        const auto worked_on = [&](const std::string& id) {
            const auto next = cited.lower_bound(id + "-");
            return next != cited.end() && next->compare(0, id.size() + 1, id + "-") == 0;
        };
        for (const auto& s : records_.sources)
            if (!cited.count(s.id) && !worked_on(s.id) && notes.find(s.id) == std::string::npos)
                add("uncited-source", "sources that no number and no note names", "source " + s.id, s.id, s.cite);
    }

    void preparations() {
        for (const auto& p : records_.preparations) {
            const auto fits = [&](const Ingredient& i) { return effect_on(p, i.tissue) != nullptr; };
            if (std::none_of(records_.ingredients.begin(), records_.ingredients.end(), fits))
                add("idle-preparation", "preparations that fit no ingredient", "preparation " + p.id, p.id);
        }
    }

    void roles() {
        std::set<std::pair<std::string_view, Role>> served;
        for (const auto& s : records_.swaps) served.insert({s.from, s.role});
        for (const auto& i : records_.ingredients)
            for (const auto role : i.roles)
                if (!served.count({i.id, role}))
                    add("no-stand-in", "roles of an ingredient in which nothing can stand in for it", "ingredient " + i.id,
                        i.id + " as " + std::string(spelling(role)));
    }

    struct Way {
        const Swap *first = nullptr, *second = nullptr;
        double closeness = 0;
    };

    using Outs = std::map<std::pair<Role, std::string_view>, std::map<std::string_view, const Swap*>>;

    // The closest way over a third ingredient that asks no condition the direct swap does not ask.
    static Way detour(const Outs& outs, const Swap& direct) {
        const auto asks_no_more = [&](const Swap& s) {
            return std::all_of(s.needs.begin(), s.needs.end(),
                               [&](const std::string& need) { return std::count(direct.needs.begin(), direct.needs.end(), need) > 0; });
        };
        Way best;
        for (const auto& [via, first] : outs.at({direct.role, direct.from})) {
            const auto onward = outs.find({direct.role, via});
            if (via == direct.to || onward == outs.end() || !asks_no_more(*first)) continue;
            const auto second = onward->second.find(direct.to);
            if (second == onward->second.end() || !asks_no_more(*second->second)) continue;
            const double closeness = first->closeness * second->second->closeness;
            if (closeness > best.closeness) best = {first, second->second, closeness};
        }
        return best;
    }

    void detours() {
        constexpr double slack = 1e-9;
        Outs outs;
        for (const auto& s : records_.swaps)
            if (s.prepared.empty() && !s.partner && s.from != s.to) outs[{s.role, s.from}][s.to] = &s;
        for (const auto& [start, ends] : outs)
            for (const auto& [end, direct] : ends) {
                const Way way = detour(outs, *direct);
                if (way.closeness <= direct->closeness + slack) continue;
                add("detour-closer", "swaps that two others in a row beat", swap_key(*direct),
                    direct->from + " > " + direct->to + " as " + std::string(spelling(direct->role)),
                    fixed_text(direct->closeness, 2) + ", but " + fixed_text(way.closeness, 3) + " by way of " + way.first->to);
            }
    }

    void acids() {
        constexpr double souring = 200, mild_ph = 5.5;  // mmol/kg and pH, judgement: what brings that much acid is not mild
        for (const auto& i : records_.ingredients) {
            const auto odd = [&](const char* why) {
                add("acid-record", "acid records that do not hang together", "ingredient " + i.id, i.id, why);
            };
            const auto& a = i.acidity;
            const bool titrated = a && a->titratable;
            if (titrated && !a->ph) odd("titratable acid without a pH");
            if (titrated && a->acids.empty()) odd("titratable acid without the acids it is made of");
            if (!titrated && contains(i.roles, Role::acid)) odd("there for its acid, without titratable acid");
            if (titrated && a->ph && a->titratable->unit == "mmol/kg" && a->titratable->band.mid > souring && a->ph->band.mid > mild_ph)
                odd("much acid at a pH that is hardly sour");
        }
    }

    void conditions() {
        for (const auto& s : records_.swaps)
            if (!s.needs.empty() && s.note.empty() && !s.returned)
                add("condition-unsaid", "swaps with a condition and no note", swap_key(s),
                    s.from + " > " + s.to + " as " + std::string(spelling(s.role)), s.needs.front());
    }

    // What is salted or brined keeps all year round.
    void seasons() {
        constexpr double brined = 0.3;  // g salt in 100 g
        const std::set<Tissue> plants{Tissue::thin_leaf, Tissue::thick_leaf, Tissue::fruit, Tissue::chile_flesh};
        for (const auto& i : records_.ingredients)
            if (plants.count(i.tissue) && i.season.empty() && i.composition.salt.mid < brined)
                add("no-season", "leaves, fruit and chiles without a season", "ingredient " + i.id, i.id);
    }

    void compositions() {
        for (const auto& i : records_.ingredients) {
            const auto& c = i.composition;
            const double sum = c.water.mid + c.protein.mid + c.fat.mid + c.carbohydrate.mid + c.ash.mid + c.alcohol.mid + c.acid.mid;
            if (sum >= 97 && sum <= 103) continue;
            add("composition-explained", "compositions outside 97-103 g, with the reason given", "ingredient " + i.id,
                i.id + " " + fixed_text(sum, 1), c.exception);
        }
    }

    const Records& records_;
    std::vector<Doubt> doubts_;
};

}  // namespace

std::vector<Doubt> doubts_about(const Records& records) { return Integrity(records).run(); }

}  // namespace standin
