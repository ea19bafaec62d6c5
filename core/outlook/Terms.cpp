#include "outlook/Terms.h"

namespace firstdew::outlook {

Terms termsOf(const Evidence& spell)
{
    Terms out;
    out.regardless = spell.regardless;
    for (const Evidence::Piece& p : spell.pieces) {
        if (out.days.empty() || out.days.back() != p.from) {
            out.days.push_back(p.from);
            out.weights.push_back(0);
        }
        out.weights.back() += p.weight;
        out.days.push_back(p.to);
        out.weights.push_back(-p.weight);
    }
    return out;
}

double chanceOf(const Evidence& spell, const Predictive& clock)
{
    const Terms terms = termsOf(spell);
    const auto survivors = clock.survivorsOn(terms.days);
    double out = terms.regardless;
    for (std::size_t i = 0; i < survivors.size(); ++i)
        out += terms.weights[i] * survivors[i];
    return out;
}

} // namespace firstdew::outlook
