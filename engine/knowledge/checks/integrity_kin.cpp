// Kin agree: a dried food with the fresh one it is made of, the green of a leaf with its lutein. What does not says why, in `apart`.
#include <unordered_map>

#include "knowledge/checks/integrity.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

struct Agreement {
    double least = 0, most = 0;
};

// Judgement: drying keeps an eighth to all of the chlorophyll of the dry matter, and a third to three times the heat (another lot);
// leaves of 13 foods had 16 times the lutein, 5th to 95th percentile a factor 3.7 either way.
constexpr Agreement dried_pigment{0.125, 1.25}, dried_heat{0.33, 3}, pigment_of_lutein{16 / 3.7, 16 * 3.7};

std::string shown(const char* what, double ratio, const Agreement& expected, const std::string& why) {
    const std::string text = std::string(what) + " " + figures_text(ratio, 2) + " times, expected " + figures_text(expected.least, 2) +
                             " to " + figures_text(expected.most, 2);
    return why.empty() ? text : text + "; " + why;
}

double of_dry_matter(const Ingredient& i, const Quantity& q) { return q.band.mid / (100 - i.composition.water.mid); }

class Kin {
public:
    explicit Kin(const Records& records) : records_(records) {
        for (const auto& i : records.ingredients) ingredients_.emplace(i.id, &i);
    }

    std::vector<Doubt> run() && {
        for (const auto& i : records_.ingredients) {
            leaf(i);
            const auto fresh = ingredients_.find(i.made_of);
            if (fresh != ingredients_.end()) made(i, *fresh->second);
        }
        std::vector<Doubt> all;
        for (auto* kind : {&missing_, &apart_, &explained_})
            for (auto& doubt : *kind) all.push_back(std::move(doubt));
        return all;
    }

private:
    void judge(const Ingredient& i, const char* what, double ratio, const Agreement& bounds) {
        if (ratio >= bounds.least && ratio <= bounds.most) return;
        const std::string detail = shown(what, ratio, bounds, i.apart);
        if (i.apart.empty()) apart_.push_back({"kin-apart", "foods that disagree with their kin", "ingredient " + i.id, i.id, detail});
        else
            explained_.push_back(
                {"kin-explained", "foods that differ from their kin, with the reason given", "ingredient " + i.id, i.id, detail});
    }

    void leaf(const Ingredient& i) {
        if (i.lutein && i.chlorophyll && i.lutein->band.mid > 0)
            judge(i, "chlorophyll to lutein", i.chlorophyll->band.mid / i.lutein->band.mid, pigment_of_lutein);
    }

    void made(const Ingredient& i, const Ingredient& fresh) {
        const auto compare = [&](const char* what, const std::optional<Quantity>& mine, const std::optional<Quantity>& theirs,
                                 const Agreement& b) {
            if (!theirs || !(theirs->band.mid > 0)) return;
            if (mine) return judge(i, what, of_dry_matter(i, *mine) / of_dry_matter(fresh, *theirs), b);
            if (i.apart.empty())
                missing_.push_back({"kin-missing", "foods without a dose that the food they are made of has", "ingredient " + i.id,
                                    i.id + " of " + fresh.id, what});
        };
        compare("chlorophyll", i.chlorophyll, fresh.chlorophyll, dried_pigment);
        compare("capsaicinoids", i.capsaicinoids, fresh.capsaicinoids, dried_heat);
    }

    const Records& records_;
    std::unordered_map<std::string, const Ingredient*> ingredients_;
    std::vector<Doubt> missing_, apart_, explained_;
};

}  // namespace

std::vector<Doubt> doubts_about_kin(const Records& records) { return Kin(records).run(); }

}  // namespace standin
