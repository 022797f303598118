#include "models/colour.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "models/colour_words.hpp"

namespace standin {
namespace {

constexpr double gas_constant = 8.314e-3;  // kJ/(mol K)
constexpr double kelvin = 273.15;
constexpr double k0_at = 373.15;                                        // K, where k0 is stated
constexpr double yellow_over_green = 3.4, least_yellow_of_spice = 0.5;  // K/S of what tints, and against the meat; judgement
constexpr double brown_over_green = 0.25, least_brown = 0.1;            // likewise; judgement
constexpr double least_red_of_spice = 0.3;  // share of the green band from which chile is what reddens it; judgement
constexpr double table_fat_low = 0.10, table_fat_mid = 0.175, table_fat_high = 0.25;  // the patties behind the cooked base

Bands operator+(const Bands& a, const Bands& b) { return {a.red + b.red, a.green + b.green, a.blue + b.blue}; }
Bands operator*(double k, const Bands& a) { return {k * a.red, k * a.green, k * a.blue}; }

double smooth_step(double along) {
    const double x = std::clamp(along, 0.0, 1.0);
    return x * x * (3 - 2 * x);
}

double meat_of(const Material& batch) {
    double grams = 0;
    for (std::size_t s = 0; s < count_of<Species>; ++s) grams += batch[static_cast<Species>(s)];
    return grams;
}

double fat_share(const Material& batch) {
    const double meat = batch[Amount::meat];
    return meat > 0 ? std::clamp(batch[Amount::meat_fat] / meat, 0.0, 1.0) : 0.0;
}

// By what is lean of each: the fat of one beast is as white as that of the next. Where none of it is lean, by all of it.
Bands mean_over_species(const Material& batch, double meat, const std::array<Bands, count_of<Species>>& each) {
    double lean = 0;
    for (std::size_t s = 0; s < count_of<Species>; ++s) lean += batch.lean(static_cast<Species>(s));
    Bands sum;
    for (std::size_t s = 0; s < count_of<Species>; ++s) {
        const auto species = static_cast<Species>(s);
        sum = sum + (lean > 0 ? batch.lean(species) / lean : batch[species] / meat) * each[s];
    }
    return sum;
}

// Where there is little meat the paste around it shows.
Bands over_plain(const Bands& meat_base, const Material& batch, double meat, const ColourParameters& p) {
    const double share = p.plain_until > 0 ? std::min(1.0, meat / batch[Amount::mass] / p.plain_until) : 1.0;
    return share * meat_base + (1 - share) * p.plain;
}

struct Pigment {  // mg/kg of the mass
    double live, set, pheophytin;
    double chlorophyll() const { return live + set; }
};

double untold_paste(const Material& batch, const ColourParameters& p, std::optional<double> leaf_paste) {
    return leaf_paste ? *leaf_paste : paste_by_share(batch.share(Amount::greens, 1), p.paste_from, p.paste_until);
}

// mg/kg of chlorophyll in pieces of leaf.
double in_pieces(const Material& batch, const ColourParameters& p, std::optional<double> leaf_paste) {
    if (!(batch[Amount::mass] > 0)) return 0;
    const double chopped = (1 - untold_paste(batch, p, leaf_paste)) * (1 - p.chopped);
    return batch.share(Amount::unseen_live, 1000) + chopped * batch.share(Amount::untold_live, 1000);
}

Pigment at_mixing(const Material& batch, const ColourParameters& p, std::optional<double> leaf_paste) {
    if (!(batch[Amount::mass] > 0)) return {0, 0, 0};
    const double live = batch.share(Amount::chlorophyll_live, 1000) - in_pieces(batch, p, leaf_paste);
    return {live * p.yield_blended, batch.share(Amount::chlorophyll_set, 1000),
            batch.share(Amount::pheophytin, 1000) + live * (1 - p.yield_blended)};
}

struct Survival {  // shares of the two chlorophylls left
    double live, set;
};

Survival survival(double celsius, double ph, double minutes, const ColourParameters& p) {
    return {kept_after(chlorophyll_rate(celsius, ph, p.phi_live_cold, p), minutes),
            kept_after(chlorophyll_rate(celsius, ph, p.phi_set_cold, p), minutes)};
}

Pigment turned(const Pigment& from, const Survival& share) {
    const Pigment now{from.live * share.live, from.set * share.set, 0};
    return {now.live, now.set, from.pheophytin + from.chlorophyll() - now.chlorophyll()};
}

// How far acid sets the mass while it rests: 0-1.
double set_by_acid(double ph, double rest_h, const ColourParameters& p) {
    return (1 - std::exp(-rest_h / p.acid_hours)) * smooth_step((p.acid_ph + p.acid_reach - ph) / (2 * p.acid_reach));
}

Lab colour_of(const Bands& base, const Bands& tint, const Pigment& pigment, double factor, const ColourParameters& p) {
    return lab_of_k_over_s(with_pigment(base, pigment.chlorophyll(), pigment.pheophytin, factor, p) + tint);
}

}  // namespace

double chlorophyll_rate(double celsius, double ph, double phi_cold, const ColourParameters& p) {
    const double warm = std::clamp((celsius - p.ramp_low_c) / (p.ramp_high_c - p.ramp_low_c), 0.0, 1.0);
    const double phi = phi_cold + (1 - phi_cold) * warm;
    return phi * p.k0 * std::exp(-p.activation / gas_constant * (1 / (celsius + kelvin) - 1 / k0_at)) *
           std::pow(10.0, -p.ph_slope * (ph - p.ph_ref));
}

double kept_after(double rate, double minutes) { return std::exp(-rate * minutes); }

double k_over_s(double r) {
    const double some = std::max(r, 1e-6);  // a perfect black would need K/S without end
    return (1 - some) * (1 - some) / (2 * some);
}

double reflectance(double x) { return 1 / (1 + x + std::sqrt(x * x + 2 * x)); }  // = 1 + x - sqrt(x^2 + 2x), without its cancellation

Bands k_over_s(const Lab& lab) {
    const Bands r = linear_rgb(lab);
    return {k_over_s(r.red), k_over_s(r.green), k_over_s(r.blue)};
}

Lab lab_of_k_over_s(const Bands& x) { return lab_of(Bands{reflectance(x.red), reflectance(x.green), reflectance(x.blue)}); }

Bands raw_base(const Material& batch, const ColourParameters& p) {
    const double meat = meat_of(batch);
    if (!(meat > 0)) return p.plain;
    const double fat = fat_share(batch), scatter = fat * p.fat_scatter;
    const Bands lean = p.raw_scale * mean_over_species(batch, meat, p.raw_lean);
    Bands base = 1 / (1 - fat + scatter) * ((1 - fat) * lean + scatter * p.raw_fat);
    base.red *= p.redness;
    base.blue *= p.raw_blue;
    return over_plain(base, batch, meat, p);
}

Bands cooked_base(const Material& batch, Cook method, const ColourParameters& p) {
    const double meat = meat_of(batch);
    if (!(meat > 0)) return p.plain;
    const double fat = std::clamp(fat_share(batch), table_fat_low, table_fat_high) - table_fat_mid;
    const double way = method == Cook::poach ? p.cooked_poached : 1;
    Bands lean = p.cooked_scale * way * mean_over_species(batch, meat, p.cooked);
    if (method == Cook::poach) lean.blue *= p.poached_blue;
    const Bands slope = fat * p.cooked_fat_slope;
    return over_plain(
        {p.cooked_red * lean.red * (1 + slope.red), lean.green * (1 + slope.green), p.cooked_blue * lean.blue * (1 + slope.blue)}, batch,
        meat, p);
}

Bands with_pigment(const Bands& base, double chlorophyll, double pheophytin, double factor, const ColourParameters& p) {
    const double total = chlorophyll + pheophytin;
    const double crowding = total > p.saturation_from ? std::pow(total / p.saturation_from, p.saturation_exponent - 1) : 1.0;
    const double strength = factor * p.pigment_strength * crowding / 100;
    return base + strength * (chlorophyll * p.chl + pheophytin * p.phe);
}

double paste_by_share(double greens, double from, double until) { return smooth_step((greens - from) / (until - from)); }

Material between_flecks(Material batch, const ColourParameters& p, std::optional<double> leaf_paste) {
    const double untold = (1 - untold_paste(batch, p, leaf_paste)) * p.chopped * batch[Amount::untold_live];
    batch[Amount::chlorophyll_live] -= batch[Amount::pieces_shown] + untold;
    return batch;
}

BatchColour batch_colour(const Material& batch, double ph, double rest_h, double rest_at_c, Cook method, double core_c,
                         const ColourParameters& p, std::optional<double> leaf_paste) {
    const Survival rest = survival(rest_at_c, ph, 60 * rest_h, p);
    const Survival cook = survival(core_c, ph, p.cook_minutes[static_cast<std::size_t>(method)], p);
    const Pigment fresh = at_mixing(batch, p, leaf_paste);
    const Pigment rested = turned(fresh, rest);
    const Pigment cooked = turned(rested, cook);

    const double mass = batch[Amount::mass];
    const Bands tint =
        mass > 0 ? 100 / mass * Bands{batch[Amount::tint_red], batch[Amount::tint_green], batch[Amount::tint_blue]} : Bands{};
    const Bands faded =
        mass > 0 ? -100 / mass * Bands{batch[Amount::fading_red], batch[Amount::fading_green], batch[Amount::fading_blue]} : Bands{};
    const Bands raw = raw_base(batch, p), done = cooked_base(batch, method, p);
    const Bands dry = method == Cook::poach ? cooked_base(batch, Cook::pan, p) : done;  // acid sets a mass without regard to the pan
    const double clear = mean_over_meats(batch, p.clear);

    BatchColour c;
    c.set_rested = set_by_acid(ph, rest_h, p);
    const double set = c.set_rested;
    const Bands acid_set{p.acid_red * dry.red, dry.green, dry.blue};
    c.raw = colour_of(raw, tint, fresh, clear, p);
    c.rested = colour_of(raw, tint, rested, clear, p);
    c.looks_rested = c.rested;
    if (set > 0) {
        const Bands paled = (1 - set) * raw + set * acid_set;
        c.looks_rested = colour_of(paled, tint, rested, (1 - set) * clear + set * p.cooked_factor, p);
        // Meat that pales makes no leaf greener: what red goes leaves the mass no greener than it was, or than the paled meat by itself.
        c.looks_rested.a = std::max(c.looks_rested.a, std::min(c.rested.a, lab_of_k_over_s(paled).a));
    }
    c.bare_raw = lab_of_k_over_s(raw);
    c.bare_cooked = lab_of_k_over_s(done);
    c.cooked = colour_of(done, tint + faded, cooked, p.cooked_factor, p);
    c.flecks_mg_kg = in_pieces(batch, p, leaf_paste);
    c.flecks_kept_rested = rest.live;
    c.flecks_kept_cooked = rest.live * cook.live;
    c.red_spice = mass > 0 && 100 / mass * batch[Amount::tint_of_red] > least_red_of_spice * (raw.green + tint.green);
    c.yellow_spice = tint.blue > yellow_over_green * tint.green && tint.blue > least_yellow_of_spice * raw.blue;
    const bool brown = tint.red > brown_over_green * tint.green && tint.blue > tint.green;  // and not violet
    c.brown_sauce = brown && tint.green > least_brown * raw.green;
    c.chlorophyll_mg_kg = fresh.chlorophyll() + p.yield_blended * c.flecks_mg_kg;
    const bool green = fresh.chlorophyll() > 0;
    c.kept_rested = green ? rested.chlorophyll() / fresh.chlorophyll() : rest.live;
    c.kept_cooked = green ? cooked.chlorophyll() / fresh.chlorophyll() : rest.live * cook.live;
    c.hue_rested = hue_of(c.rested);
    return c;
}

constexpr double pink_to_hue = 72;  // degrees: raw meat yellower than this is not pink

// Red and pink meat by what makers call it, for beside fat and leaf nobody calls it the grey or brown of a lone swatch; all else by what
// people say.
namespace {

// What has set pale: no cook calls boiled fowl or cod tan or grey, as people do the lone swatch, for it is the palest thing on the plate.
// Empty for what is darker, redder or greener.
std::string_view word_of_pale(const Lab& lab) {
    constexpr double light_from = 71, green_to = -2.5, red_to = 5, white_to = 12.5, cream_to = 24;
    if (lab.L < light_from || lab.a < green_to || lab.a > red_to) return {};
    const double strength = chroma_of(lab);
    return strength < white_to ? "white" : strength < cream_to ? "cream" : std::string_view{};
}

bool is_red(const Lab& lab) { return lab.a > 12 && lab.L < 36 + lab.a; }  // the darker, the less a* it takes

// Red chile in a cooked mass: by the survey it is brown or tan, and no cook calls it pink.
bool brown_of_spice(const Lab& lab, Doneness done) {
    constexpr double red_from = 8, pink_to = 45, khaki_from = 80, light_from = 60;
    const double hue = hue_of(lab);
    return done == Doneness::cooked && lab.a > red_from && hue >= pink_to && hue < khaki_from && lab.L < light_from && !is_red(lab);
}

// Salmon and shrimp, raw and cooked: neither pink nor tan.
bool orange_pink(const Lab& lab, Doneness done) {
    constexpr double raw_red_from = 7.5, cooked_red_from = 5, red_hue = 50, strong_from = 16, raw_light_from = 48, cooked_light_from = 60;
    const bool raw = done == Doneness::raw;
    const double hue = hue_of(lab), light_from = raw ? raw_light_from : cooked_light_from, yellow_hue = raw ? 72 : 74;
    return lab.L >= light_from && lab.a >= (raw ? raw_red_from : cooked_red_from) && hue >= red_hue && hue <= yellow_hue &&
           chroma_of(lab) >= strong_from;
}

// White fish, raw: neither pink nor yet brown.
std::string_view word_of_raw_white(const Lab& lab, Doneness done) {
    constexpr double light_from = 50, white_from = 58, red_to = 2.5, pale_to = 12;
    if (done != Doneness::raw || lab.L < light_from || std::abs(lab.a) > red_to || chroma_of(lab) > pale_to) return {};
    return lab.L < white_from ? "greyish" : "greyish white";
}

// Turmeric, saffron: no survey name near it is a cook's.
std::string_view word_of_yellow(const Lab& lab) {
    constexpr double strong_from = 26, orange_to = 70, green_from = 90, light_from = 58, dark_to = 40;
    const double hue = hue_of(lab);
    if (chroma_of(lab) < strong_from || hue < orange_to || hue > green_from || lab.L < dark_to) return {};
    return lab.L >= light_from ? "yellow" : "yellow-brown";
}

}  // namespace

bool colour_is_surveyed(const Lab& lab, Doneness done) {
    if (!word_of_yellow(lab).empty() || !word_of_raw_white(lab, done).empty()) return false;
    constexpr double red_from = 8, pink_from = 2;
    if (brown_of_spice(lab, done)) return true;
    if (orange_pink(lab, done) || (done == Doneness::cooked && !word_of_pale(lab).empty())) return false;
    if (lab.a > red_from) return false;
    if (lab.a <= pink_from) return true;
    return done == Doneness::raw ? hue_of(lab) >= pink_to_hue : surveyed_name(lab).word != "greyish";
}

std::string_view colour_word(const Lab& lab, Doneness done) {
    if (const auto yellow = word_of_yellow(lab); !yellow.empty()) return yellow;
    if (const auto white = word_of_raw_white(lab, done); !white.empty()) return white;
    if (colour_is_surveyed(lab, done)) return surveyed_name(lab).word;
    if (orange_pink(lab, done)) return "orange-pink";
    if (const auto pale = word_of_pale(lab); done == Doneness::cooked && !pale.empty()) return pale;
    constexpr double pale_from = 48, raw_pale_from = 46, yellow_from = 55, khaki_from = 80, yellow_to = 180;
    const double hue = hue_of(lab);
    if (is_red(lab)) return "red";
    if (done == Doneness::raw && hue < pink_to_hue) return lab.L < raw_pale_from ? surveyed_name(lab).word : "pale pink";
    if (hue < yellow_from || hue >= yellow_to) return "pink";
    return lab.L < pale_from ? "brown" : hue < khaki_from ? "tan" : "khaki";
}

std::string_view colour_word_beside(const Lab& lab, const Lab& bare, Doneness done) {
    constexpr double another_from = 8, dark_to = 33, strong_from = 25;  // dE00 from which it is not the meat that is seen; judgement
    const auto word = colour_word(lab, done);
    const bool of_meat = word == "pink" || word == "pale pink" || word == "red";
    const bool strong_red = word == "red" && chroma_of(lab) >= strong_from;  // sockeye, raw blood
    if (!of_meat || strong_red || ciede2000(lab, bare) < another_from) return word;
    const auto said = surveyed_name(lab).word;
    return said == "brown" && lab.L < dark_to ? "dark brown" : said;
}

std::string_view colour_word_spiced(const Lab& lab, Doneness done) {
    constexpr double raw_from = 9, cooked_from = 7, red_hue = 38, yellow_hue = 80, light_from = 64, raw_pale_from = 57,
                     cooked_pale_from = 61;
    const double hue = hue_of(lab);
    if (hue < red_hue || hue > yellow_hue || lab.L > light_from) return colour_word(lab, done);
    if (lab.a < (done == Doneness::raw ? raw_from : cooked_from)) return colour_word(lab, done);
    const double pale_from = done == Doneness::raw ? raw_pale_from : cooked_pale_from;  // too little chile is tan
    if (const auto said = surveyed_name(lab).word; lab.L > pale_from && (said == "tan" || said == "greyish")) return said;
    return done == Doneness::raw ? "brick red" : "red-brown";
}

std::string_view colour_word_yellowed(const Lab& lab, Doneness done) {
    constexpr double strong_from = 18, yellow_from = 22.5, red_hue = 45, light_from = 52, orange_from = 10;
    const double hue = hue_of(lab);
    if (!word_of_yellow(lab).empty() || chroma_of(lab) < strong_from || hue < red_hue || hue > pink_to_hue + 3)
        return colour_word(lab, done);
    if (lab.a < orange_from && chroma_of(lab) < yellow_from && surveyed_name(lab).word == "tan") return "tan";
    return lab.L < light_from ? "yellow-brown" : lab.a >= orange_from ? "orange" : "yellow";
}

std::string_view colour_word_set(const Lab& lab) {
    constexpr double light_from = 58, grey_from = 48, red_to = 9, green_to = -2.5, pale_to = 18;
    if (const auto pale = word_of_pale(lab); !pale.empty()) return pale;
    if (chroma_of(lab) > pale_to || lab.a > red_to || lab.a < green_to || lab.L < grey_from) return colour_word(lab, Doneness::cooked);
    return lab.L >= light_from ? "greyish white" : "greyish";
}

std::string_view fleck_word(double flecks_mg_kg, double kept, const ColourParameters& p) {
    constexpr double green_from = 0.5;  // share of its chlorophyll that is left
    if (flecks_mg_kg < p.flecks_from) return {};
    return kept >= green_from ? "green" : "olive";
}

namespace {

using P = ColourParameters;

double& clear_of(P& p, std::size_t species) { return p.clear[species]; }

template <double Bands::*band>
double& raw_lean(P& p, std::size_t species) {
    return p.raw_lean[species].*band;
}

template <double Bands::*band>
double& cooked(P& p, std::size_t species) {
    return p.cooked[species].*band;
}

constexpr std::array own{
    Binding<P>{"colour.k0", [](P& p) -> double& { return p.k0; }},
    Binding<P>{"colour.ph-ref", [](P& p) -> double& { return p.ph_ref; }},
    Binding<P>{"colour.activation", [](P& p) -> double& { return p.activation; }},
    Binding<P>{"colour.ph-slope", [](P& p) -> double& { return p.ph_slope; }},
    Binding<P>{"colour.phi.live", [](P& p) -> double& { return p.phi_live_cold; }},
    Binding<P>{"colour.phi.set", [](P& p) -> double& { return p.phi_set_cold; }},
    Binding<P>{"colour.phi.ramp-low", [](P& p) -> double& { return p.ramp_low_c; }},
    Binding<P>{"colour.phi.ramp-high", [](P& p) -> double& { return p.ramp_high_c; }},
    Binding<P>{"colour.chopped", [](P& p) -> double& { return p.chopped; }},
    Binding<P>{"colour.paste.from", [](P& p) -> double& { return p.paste_from; }},
    Binding<P>{"colour.paste.until", [](P& p) -> double& { return p.paste_until; }},
    Binding<P>{"colour.flecks.from", [](P& p) -> double& { return p.flecks_from; }},
    Binding<P>{"colour.acid.ph", [](P& p) -> double& { return p.acid_ph; }},
    Binding<P>{"colour.acid.reach", [](P& p) -> double& { return p.acid_reach; }},
    Binding<P>{"colour.acid.hours", [](P& p) -> double& { return p.acid_hours; }},
    Binding<P>{"colour.acid.red", [](P& p) -> double& { return p.acid_red; }},
    Binding<P>{"colour.yield.blended", [](P& p) -> double& { return p.yield_blended; }},
    Binding<P>{"colour.chlorophyll.red", [](P& p) -> double& { return p.chl.red; }},
    Binding<P>{"colour.chlorophyll.green", [](P& p) -> double& { return p.chl.green; }},
    Binding<P>{"colour.chlorophyll.blue", [](P& p) -> double& { return p.chl.blue; }},
    Binding<P>{"colour.pheophytin.red", [](P& p) -> double& { return p.phe.red; }},
    Binding<P>{"colour.pheophytin.green", [](P& p) -> double& { return p.phe.green; }},
    Binding<P>{"colour.pheophytin.blue", [](P& p) -> double& { return p.phe.blue; }},
    Binding<P>{"colour.pigment-strength", [](P& p) -> double& { return p.pigment_strength; }},
    Binding<P>{"colour.cooked-factor", [](P& p) -> double& { return p.cooked_factor; }},
    Binding<P>{"colour.saturation.from", [](P& p) -> double& { return p.saturation_from; }},
    Binding<P>{"colour.saturation.exponent", [](P& p) -> double& { return p.saturation_exponent; }},
    Binding<P>{"colour.greenest", [](P& p) -> double& { return p.greenest; }},
    Binding<P>{"colour.raw-fat.red", [](P& p) -> double& { return p.raw_fat.red; }},
    Binding<P>{"colour.raw-fat.green", [](P& p) -> double& { return p.raw_fat.green; }},
    Binding<P>{"colour.raw-fat.blue", [](P& p) -> double& { return p.raw_fat.blue; }},
    Binding<P>{"colour.fat-scatter", [](P& p) -> double& { return p.fat_scatter; }},
    Binding<P>{"colour.cooked-fat-slope.red", [](P& p) -> double& { return p.cooked_fat_slope.red; }},
    Binding<P>{"colour.cooked-fat-slope.green", [](P& p) -> double& { return p.cooked_fat_slope.green; }},
    Binding<P>{"colour.cooked-fat-slope.blue", [](P& p) -> double& { return p.cooked_fat_slope.blue; }},
    Binding<P>{"colour.raw-scale", [](P& p) -> double& { return p.raw_scale; }},
    Binding<P>{"colour.cooked-scale", [](P& p) -> double& { return p.cooked_scale; }},
    Binding<P>{"colour.redness", [](P& p) -> double& { return p.redness; }},
    Binding<P>{"colour.raw-blue", [](P& p) -> double& { return p.raw_blue; }},
    Binding<P>{"colour.cooked-red", [](P& p) -> double& { return p.cooked_red; }},
    Binding<P>{"colour.cooked-blue", [](P& p) -> double& { return p.cooked_blue; }},
    Binding<P>{"colour.cooked-poached", [](P& p) -> double& { return p.cooked_poached; }},
    Binding<P>{"colour.cooked-poached-blue", [](P& p) -> double& { return p.poached_blue; }},
    Binding<P>{"colour.plain.red", [](P& p) -> double& { return p.plain.red; }},
    Binding<P>{"colour.plain.green", [](P& p) -> double& { return p.plain.green; }},
    Binding<P>{"colour.plain.blue", [](P& p) -> double& { return p.plain.blue; }},
    Binding<P>{"colour.plain.until", [](P& p) -> double& { return p.plain_until; }},
    Binding<P>{"colour.minutes.pan", [](P& p) -> double& { return p.cook_minutes[0]; }},
    Binding<P>{"colour.minutes.grill", [](P& p) -> double& { return p.cook_minutes[1]; }},
    Binding<P>{"colour.minutes.oven", [](P& p) -> double& { return p.cook_minutes[2]; }},
    Binding<P>{"colour.minutes.poach", [](P& p) -> double& { return p.cook_minutes[3]; }},
    Binding<P>{"colour.minutes.loose", [](P& p) -> double& { return p.cook_minutes[4]; }},
};

constexpr auto bindings = joined(BySpecies<"colour.raw.", ".red", P>::bindings<raw_lean<&Bands::red>>(),
                                 BySpecies<"colour.raw.", ".green", P>::bindings<raw_lean<&Bands::green>>(),
                                 BySpecies<"colour.raw.", ".blue", P>::bindings<raw_lean<&Bands::blue>>(),
                                 BySpecies<"colour.cooked.", ".red", P>::bindings<cooked<&Bands::red>>(),
                                 BySpecies<"colour.cooked.", ".green", P>::bindings<cooked<&Bands::green>>(),
                                 BySpecies<"colour.cooked.", ".blue", P>::bindings<cooked<&Bands::blue>>(),
                                 BySpecies<"colour.clear.", "", P>::bindings<clear_of>(), own);

}  // namespace

std::span<const Binding<ColourParameters>> colour_bindings() { return bindings; }

}  // namespace standin
