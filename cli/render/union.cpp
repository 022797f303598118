#include "render/union.hpp"

#include <algorithm>

#include "render/units.hpp"
#include "words.hpp"

namespace standin::cli {
namespace {

// "(2, 3) ": of which batches something is said; empty where it holds for the original.
std::string mark(const std::vector<std::size_t>& of) {
    std::string text;
    for (const auto n : of) text += (text.empty() ? "" : ", ") + std::to_string(n);
    return text.empty() ? "" : "(" + text + ") ";
}

class Union {
public:
    void start(const std::vector<AllergenText>& allergens, const std::vector<CautionText>& cautions) {
        for (const auto& a : allergens) allergens_.push_back({a, {}, true});
        for (const auto& c : cautions) cautions_.push_back({c, {}, true});
    }

    void add(const std::vector<AllergenText>& allergens, std::size_t rank) {
        for (const auto& a : allergens) {
            const auto known =
                std::find_if(allergens_.begin(), allergens_.end(), [&](const auto& k) { return k.what.allergen == a.allergen; });
            if (known == allergens_.end()) {
                allergens_.push_back({a, {rank}, false});
                continue;
            }
            for (const auto& food : a.from)
                if (std::find(known->what.from.begin(), known->what.from.end(), food) == known->what.from.end())
                    known->what.from.push_back(food);
            if (!known->always) known->of.push_back(rank);
        }
    }

    void add(const std::vector<CautionText>& cautions, std::size_t rank) {
        for (const auto& c : cautions) {
            const auto known = std::find_if(cautions_.begin(), cautions_.end(), [&](const auto& k) { return k.what.text == c.text; });
            if (known == cautions_.end()) cautions_.push_back({c, {rank}, false});
            else if (!known->always) known->of.push_back(rank);
        }
    }

    void finish(Together& all) {
        for (auto& a : allergens_) {
            a.what.allergen = a.what.allergen + (a.always ? "" : " (in " + mark_words(a.of) + ")");
            all.allergens.push_back(std::move(a.what));
        }
        for (auto& c : cautions_) {
            c.what.text = (c.always ? "" : mark(c.of)) + c.what.text;
            if (!c.always) all.cautions.push_back(c.what);  // what only a swap brings comes first
        }
        for (auto& c : cautions_)
            if (c.always) all.cautions.push_back(std::move(c.what));
    }

private:
    template <class T>
    struct Known {
        T what;
        std::vector<std::size_t> of;
        bool always = false;
    };

    static std::string mark_words(const std::vector<std::size_t>& of) {
        std::vector<std::string> words;
        for (const auto n : of) words.push_back(std::to_string(n));
        return listed(words);
    }

    std::vector<Known<AllergenText>> allergens_;
    std::vector<Known<CautionText>> cautions_;
};

}  // namespace

std::string cook_line(const Together& all) {
    return "Cook to " + all.core + " in the middle, measured" + (all.many ? ", whichever you make." : ".");
}

Together together(const AdaptAnswer& answer) {
    Together all;
    Union both;
    both.start(answer.base.allergens, answer.base.cautions);
    double hottest = answer.base.core_c;
    for (const auto& v : answer.variants) {
        both.add(v.prediction.allergens, v.rank);
        both.add(v.prediction.cautions, v.rank);
        hottest = std::max(hottest, v.prediction.core_c);
    }
    both.finish(all);
    all.many = answer.variants.size() > 1;
    all.core = core(hottest);
    return all;
}

Together together(const SwapsAnswer& answer) {
    Together all;
    Union both;
    both.start(answer.allergens, answer.cautions);
    double hottest = answer.core_c;
    for (std::size_t i = 0; i < answer.stand_ins.size(); ++i) {
        const auto& s = answer.stand_ins[i];
        both.add(s.allergens, i + 1);
        both.add(s.cautions, i + 1);
        hottest = std::max(hottest, s.core_c);
    }
    both.finish(all);
    all.many = !answer.stand_ins.empty();
    all.core = core(hottest);
    return all;
}

}  // namespace standin::cli
