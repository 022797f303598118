// Many mutants in one build: every place that may be changed asks here which side is on. STANDIN_MUTANT is the number of the one that is
// changed; with STANDIN_MUTANT_HITS a file is written that says which tests come by which place (hits.hpp).
//
// Operators are changed as named operators, which need to know nothing of what stands around them: `a < place > b` binds as `a < b` did.
#pragma once
#pragma GCC system_header

#include <algorithm>
#include <array>
#include <atomic>
#include <cstdlib>
#include <initializer_list>
#include <type_traits>

namespace mutant {

inline int chosen() {
    static const int number = [] {
        const char* text = std::getenv("STANDIN_MUTANT");
        return text ? std::atoi(text) : -1;
    }();
    return number;
}

inline std::array<std::atomic<bool>, 20000> hits;

inline bool on(int place) {
    hits[static_cast<std::size_t>(place)].store(true, std::memory_order_relaxed);
    return chosen() == place;
}

enum class Op { lt, le, gt, ge, eq, ne, add, sub, mul, div };

template <Op op, class A, class B>
constexpr bool can() {
    if constexpr (op == Op::lt) return requires(const A& a, const B& b) {
            a < b;
        };
    else if constexpr (op == Op::le) return requires(const A& a, const B& b) {
            a <= b;
        };
    else if constexpr (op == Op::gt) return requires(const A& a, const B& b) {
            a > b;
        };
    else if constexpr (op == Op::ge) return requires(const A& a, const B& b) {
            a >= b;
        };
    else if constexpr (op == Op::eq) return requires(const A& a, const B& b) {
            a == b;
        };
    else if constexpr (op == Op::ne) return requires(const A& a, const B& b) {
            a != b;
        };
    else if constexpr (op == Op::add) return requires(const A& a, const B& b) {
            a + b;
        };
    else if constexpr (op == Op::sub) return requires(const A& a, const B& b) {
            a - b;
        };
    else if constexpr (op == Op::mul) return requires(const A& a, const B& b) {
            a* b;
        };
    else return requires(const A& a, const B& b) {
            a / b;
        };
}

template <Op op, class A, class B>
constexpr auto done(const A& a, const B& b) {
    if constexpr (op == Op::lt) return a < b;
    else if constexpr (op == Op::le) return a <= b;
    else if constexpr (op == Op::gt) return a > b;
    else if constexpr (op == Op::ge) return a >= b;
    else if constexpr (op == Op::eq) return a == b;
    else if constexpr (op == Op::ne) return a != b;
    else if constexpr (op == Op::add) return a + b;
    else if constexpr (op == Op::sub) return a - b;
    else if constexpr (op == Op::mul) return a * b;
    else return a / b;
}

/// One of `was`, `now` on two operands; a type that has no `now` is left as it is and never counts as hit.
template <int number, Op was, Op now>
struct Place {
    template <class A, class B>
    static constexpr auto of(const A& a, const B& b) {
        using Result = decltype(done<was>(a, b));
        if (std::is_constant_evaluated()) return done<was>(a, b);
        if constexpr (can<now, A, B>()) {
            if constexpr (std::is_convertible_v<decltype(done<now>(a, b)), Result>) {
                if (on(number)) return static_cast<Result>(done<now>(a, b));
            }
        }
        return done<was>(a, b);
    }
};

template <class At, class A>
struct Left {
    const A& a;
};

template <class A, int n, Op w, Op m>
constexpr Left<Place<n, w, m>, A> operator<(const A& a, Place<n, w, m>) {
    return {a};
}
template <class At, class A, class B>
constexpr bool operator>(Left<At, A> left, const B& b) {
    return At::of(left.a, b);
}

template <class A, int n, Op w, Op m>
constexpr Left<Place<n, w, m>, A> operator==(const A& a, Place<n, w, m>) {
    return {a};
}
template <class At, class A, class B>
constexpr bool operator==(Left<At, A> left, const B& b) {
    return At::of(left.a, b);
}

template <class A, int n, Op w, Op m>
constexpr Left<Place<n, w, m>, A> operator+(const A& a, Place<n, w, m>) {
    return {a};
}
template <class At, class A, class B>
constexpr auto operator+(Left<At, A> left, const B& b) {
    return At::of(left.a, b);
}

template <class A, int n, Op w, Op m>
constexpr Left<Place<n, w, m>, A> operator*(const A& a, Place<n, w, m>) {
    return {a};
}
template <class At, class A, class B>
constexpr auto operator*(Left<At, A> left, const B& b) {
    return At::of(left.a, b);
}

/// `not_<7> ->* x` for `!x`
template <int number>
struct Not {};
template <int number, class B>
constexpr bool operator->*(Not<number>, const B& b) {
    return on(number) ? static_cast<bool>(b) : !static_cast<bool>(b);
}

template <int number, class T>
T constant(T was, T now) {
    return on(number) ? now : was;
}

template <int number>
bool truth(bool was) {
    return on(number) ? !was : was;
}

/// `extreme<7, true>(a, b)` for `std::min(a, b)`
template <int number, bool least>
struct Extreme {
    template <class T>
    T operator()(const T& a, const T& b) const {
        return on(number) == least ? std::max(a, b) : std::min(a, b);
    }
    template <class T>
    T operator()(std::initializer_list<T> all) const {
        return on(number) == least ? std::max(all) : std::min(all);
    }
};

}  // namespace mutant
