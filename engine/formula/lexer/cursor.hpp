// A place in a line that moves over numbers, words and signs.
#pragma once

#include <cstddef>
#include <initializer_list>
#include <string>
#include <string_view>

namespace standin {

class Cursor {
public:
    explicit Cursor(std::string_view text, std::size_t at = 0) : text_(text), at_(at) {}

    std::size_t at() const { return at_; }
    void go(std::size_t at) { at_ = at; }
    bool done() const { return at_ >= text_.size(); }
    std::string_view rest() const { return text_.substr(at_); }
    bool digit() const { return !done() && text_[at_] >= '0' && text_[at_] <= '9'; }

    /// Over blanks of all kinds, but not over a line end: that separates the values a JSON line was put together from.
    void space();

    bool eat(std::string_view sign);
    bool eat_dash();

    /// The run of letters here; nothing is passed. Signs and digits are no letters.
    std::string_view word() const;

    /// Passes blanks and the next word when it folds to `folded`, else nothing.
    bool eat_word(std::string_view folded);
    bool eat_any_word(std::initializer_list<std::string_view> folded);

private:
    std::string_view text_;
    std::size_t at_;
};

}  // namespace standin
