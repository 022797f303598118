#include "evaluate/faults.hpp"

#include <utf8.h>

#include <cmath>

#include "standin/number_text.hpp"

namespace standin {

void Faults::add(const std::string& fault) {
    if (all_.size() < most_said) all_.push_back(fault);
}

void Faults::unless(bool sound, const std::string& fault) {
    if (!sound) add(fault);
}

void Faults::text(const std::string& value, const std::string& what) {
    unless(utf8::is_valid(value.begin(), value.end()), what + " is not UTF-8 text");
    unless(value.size() <= longest_text, what + " is longer than " + std::to_string(longest_text) + " bytes");
}

void Faults::within(double value, double low, double high, const std::string& what) {
    unless(std::isfinite(value) && value >= low && value <= high,
           what + ": expected a number from " + exact_text(low) + " to " + exact_text(high) + ", not " + exact_text(value));
}

std::string quoted(const std::string& id) { return utf8::is_valid(id.begin(), id.end()) ? "\"" + id.substr(0, 80) + "\"" : "(no text)"; }

}  // namespace standin
