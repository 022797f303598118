#include "optimize/mixed_integer.hpp"

#include <glpk.h>

#include <algorithm>
#include <cmath>
#include <memory>
#include <mutex>

namespace standin {
namespace {

using Held = std::unique_ptr<glp_prob, void (*)(glp_prob*)>;

// GLPK keeps an environment of its own a thread; one solve at a time costs nothing here and asks nothing of how it was built.
std::mutex& one_at_a_time() {
    static std::mutex mutex;
    return mutex;
}

void load(glp_prob* p, const MixedInteger& programme) {
    glp_set_obj_dir(p, GLP_MAX);
    if (!programme.variables.empty()) glp_add_cols(p, static_cast<int>(programme.variables.size()));
    for (std::size_t v = 0; v < programme.variables.size(); ++v) {
        const auto& variable = programme.variables[v];
        const int column = static_cast<int>(v) + 1;
        glp_set_obj_coef(p, column, variable.gain);
        glp_set_col_bnds(p, column, variable.high > variable.low ? GLP_DB : GLP_FX, variable.low, variable.high);
        if (variable.whole) glp_set_col_kind(p, column, GLP_IV);
    }
    if (!programme.rows.empty()) glp_add_rows(p, static_cast<int>(programme.rows.size()));
    for (std::size_t r = 0; r < programme.rows.size(); ++r) {
        std::vector<int> columns{0};
        std::vector<double> values{0};  // GLPK counts from 1
        for (const auto& [variable, by] : programme.rows[r].parts) {
            columns.push_back(static_cast<int>(variable) + 1);
            values.push_back(by);
        }
        glp_set_row_bnds(p, static_cast<int>(r) + 1, GLP_UP, 0, programme.rows[r].room);
        glp_set_mat_row(p, static_cast<int>(r) + 1, static_cast<int>(columns.size()) - 1, columns.data(), values.data());
    }
}

}  // namespace

std::optional<std::vector<double>> best_of(const MixedInteger& programme) {
    const std::lock_guard lock(one_at_a_time());
    glp_term_out(GLP_OFF);
    const Held problem(glp_create_prob(), glp_delete_prob);
    load(problem.get(), programme);
    glp_smcp relaxed;
    glp_init_smcp(&relaxed);
    relaxed.msg_lev = GLP_MSG_OFF;
    if (glp_simplex(problem.get(), &relaxed) != 0 || glp_get_status(problem.get()) != GLP_OPT) return std::nullopt;
    glp_iocp whole;
    glp_init_iocp(&whole);
    whole.msg_lev = GLP_MSG_OFF;
    if (glp_intopt(problem.get(), &whole) != 0 || glp_mip_status(problem.get()) != GLP_OPT) return std::nullopt;
    std::vector<double> best;
    for (std::size_t v = 0; v < programme.variables.size(); ++v) {
        const auto& variable = programme.variables[v];
        const double value = glp_mip_col_val(problem.get(), static_cast<int>(v) + 1);
        best.push_back(std::clamp(variable.whole ? std::round(value) : value, variable.low, variable.high));
    }
    return best;
}

}  // namespace standin
