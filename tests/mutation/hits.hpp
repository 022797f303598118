// Which test comes by which place of mutant.hpp: a line a test, its seconds, its name and the numbers, parted by tabs.
#pragma once

#include <chrono>
#include <fstream>
#include <string>

#include "mutation/mutant.hpp"
#include "support/catch.hpp"

namespace mutant {

#if __has_include(<catch2/catch_all.hpp>)
using Listener = Catch::EventListenerBase;
inline const Catch::TestCaseInfo& info(const Catch::TestCaseInfo* test) { return *test; }
#else
using Listener = Catch::TestEventListenerBase;
inline const Catch::TestCaseInfo& info(const Catch::TestCaseInfo& test) { return test; }
#endif

class Hits : public Listener {
public:
    using Listener::Listener;

    void testCaseStarting(const Catch::TestCaseInfo&) override { began_ = std::chrono::steady_clock::now(); }

    void testCaseEnded(const Catch::TestCaseStats& stats) override {
        const char* path = std::getenv("STANDIN_MUTANT_HITS");
        if (!path) return;
        std::ofstream out(path, std::ios::app);
        out << std::chrono::duration<double>(std::chrono::steady_clock::now() - began_).count() << '\t' << info(stats.testInfo).name;
        for (std::size_t place = 0; place < hits.size(); ++place)
            if (hits[place].exchange(false)) out << '\t' << place;
        out << '\n';
    }

private:
    std::chrono::steady_clock::time_point began_;
};

CATCH_REGISTER_LISTENER(Hits)

}  // namespace mutant
