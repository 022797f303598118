// Bind by foods as they stand in the knowledge: what a maker knows of cuts, fats and binders.
#include <string>
#include <vector>

#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace bind_of_foods_test {

Formula sausage(std::vector<Line> lines, double mixed_at_c = 4) {
    Formula f = formula(std::move(lines));
    f.process = {5, 3, mixed_at_c, 12, 3, 71, 30, {}, Order::salt_first, Cook::pan};
    return f;
}

PerProperty<double> made(std::vector<Line> lines, double mixed_at_c = 4) {
    lines.push_back(line("table-salt", 18));
    return nominal_state(sausage(std::move(lines), mixed_at_c), nominal()).properties;
}

PerProperty<double> bound(const char* binder, double grams) {
    return made({line("pork-shoulder", 1000), line("spinach", 100, {"blanched", "squeezed"}), line(binder, grams)});
}

double bind_record(const char* id) { return knowledge().ingredient(id)->meat->bind.band.mid; }

TEST_CASE("a cut that the trade rates higher does not bind less for its pH") {
    CHECK(bind_record("beef-chuck") > bind_record("pork-leg"));
    CHECK(made({line("beef-chuck", 1000)})[Property::bind] > made({line("pork-leg", 1000)})[Property::bind]);
}

TEST_CASE("siblings agree: a shoulder and its own trim, and fatter trim binds less") {
    CHECK(bind_record("pork-trim-80") == Approx(bind_record("pork-shoulder")).margin(0.1));
    CHECK(bind_record("pork-trim-90") >= bind_record("pork-trim-80"));
    CHECK(bind_record("pork-trim-80") >= bind_record("pork-trim-50"));
    CHECK(bind_record("pork-belly") == Approx(bind_record("pork-trim-50")).margin(0.1));
    CHECK(bind_record("ground-beef-95") >= bind_record("ground-beef-70"));
}

TEST_CASE("fats by hardness: warm mixing smears oil before duck before leaf before back fat before suet") {
    double before = 0;
    for (const char* fat : {"olive-oil", "duck-fat", "pork-leaf-fat", "pork-backfat", "beef-suet"}) {
        const double bind = made({line("pork-leg-lean", 750), line(fat, 250)}, 12)[Property::bind];
        CAPTURE(fat, bind);
        CHECK(bind > before);
        before = bind;
    }
}

TEST_CASE("oil is no equal for back fat: softer, and it weeps") {
    const auto firm = made({line("pork-leg-lean", 750), line("pork-backfat", 250)});
    for (const char* fat : {"olive-oil", "lard", "duck-fat"}) {
        const auto loose = made({line("pork-leg-lean", 750), line(fat, 250)});
        CAPTURE(fat);
        CHECK(loose[Property::firmness] < firm[Property::firmness] - 5);
        CHECK(loose[Property::cook_loss_pct] > firm[Property::cook_loss_pct] + 3);
    }
}

TEST_CASE("a third of a percent of gum does not bind: it holds water and softens") {
    const auto plain = made({line("pork-shoulder", 1000), line("spinach", 100, {"blanched", "squeezed"})});
    for (const char* gum : {"xanthan-gum", "guar-gum"}) {
        const auto thick = bound(gum, 3.5);
        CAPTURE(gum);
        CHECK(thick[Property::bind] <= plain[Property::bind]);
        CHECK(thick[Property::firmness] < plain[Property::firmness]);
        CHECK(thick[Property::cook_loss_pct] < plain[Property::cook_loss_pct]);
        for (const char* binder : {"soy-protein-isolate", "egg-white-powder", "potato-starch", "rusk"})
            CHECK(bound(binder, 20)[Property::bind] > thick[Property::bind]);
    }
}

TEST_CASE("what sets when chilled binds nothing hot and slices cold, and the page says so") {
    for (const char* jelly : {"gelatin", "agar", "carrageenan"}) {
        const Formula f = sausage({line("pork-shoulder", 1000), line("table-salt", 18), line("water", 60), line(jelly, 15)});
        const BatchBind b = NominalBatch(f, nominal()).bind();
        CAPTURE(jelly);
        CHECK(b.binder <= (std::string(jelly) == "carrageenan" ? 0.1 : 0.005));  // carrageenan holds some water in the heat as well
        CHECK(b.bind_served_cold > b.bind + 5);
    }
}

}  // namespace bind_of_foods_test
