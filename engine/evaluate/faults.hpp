// What is wrong with something that a program has put together by hand, collected.
#pragma once

#include <string>
#include <vector>

namespace standin {

/// A crumb on the finest scale, and a tonne: a slip beyond; judgement.
constexpr double least_grams = 0.001, most_grams = 1e6;

class Faults {
public:
    void add(const std::string& fault);
    void unless(bool sound, const std::string& fault);
    /// UTF-8, and not endless.
    void text(const std::string& value, const std::string& what);
    void within(double value, double low, double high, const std::string& what);
    std::vector<std::string> all() && { return std::move(all_); }

    static constexpr std::size_t longest_text = 10000;  // bytes

private:
    static constexpr std::size_t most_said = 50;
    std::vector<std::string> all_;
};

/// An unknown id may be anything: shown only where it is text.
std::string quoted(const std::string& id);

}  // namespace standin
