#include "outlook/Dose.h"

#include "outlook/Terms.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace firstdew::outlook {

namespace {

/// The charges of the latest completed sessions, by kind and waveform.
class Usual {
public:
    [[nodiscard]] std::optional<double> of(Site site, Waveform waveform) const
    {
        const auto found = m_latest.find({site, waveform});
        if (found == m_latest.end() || static_cast<int>(found->second.size()) < kUsualFrom)
            return std::nullopt;
        std::vector<double> sorted = found->second;
        std::sort(sorted.begin(), sorted.end());
        const std::size_t middle = sorted.size() / 2;
        return sorted.size() % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }
    void add(const Session& s)
    {
        if (!s.completed || !s.charge || !(s.charge->mAmin > 0))
            return;
        auto& latest = m_latest[{s.site, s.waveform}];
        latest.push_back(s.charge->mAmin);
        if (static_cast<int>(latest.size()) > kUsualOfLatest)
            latest.erase(latest.begin());
    }

private:
    std::map<std::pair<Site, Waveform>, std::vector<double>> m_latest;
};

/// What the sessions of one day came to, each beside the usual one before that day.
class Sum {
public:
    void add(const Session& s, const Usual& usual)
    {
        m_any = true;
        m_completed = m_completed || s.completed;
        m_bySides = m_bySides || s.site == Site::HandFoot;
        const auto beside = usual.of(s.site, s.waveform);
        if (beside && s.charge)
            m_dose += s.charge->mAmin / *beside;
        else if (s.completed) // not known: as usual
            m_dose += 1;
    }
    [[nodiscard]] std::optional<TreatedDay> on(LocalDate day) const
    {
        const double least = m_bySides ? kStoppedCountsBySides : kStoppedCounts;
        if (!m_any || (!m_completed && m_dose < least))
            return std::nullopt;
        const bool usual = m_dose >= kUsualLeast && m_dose <= kUsualMost;
        return TreatedDay{day, usual ? 1 : std::clamp(m_dose, kLeastDose, kMostDose), m_completed};
    }

private:
    bool m_any = false;
    bool m_completed = false;
    bool m_bySides = false;
    double m_dose = 0;
};

} // namespace

std::vector<TreatedDay> treatedDays(const Diary& diary, DiarySite site)
{
    std::vector<TreatedDay> out;
    Usual usual;
    const auto& all = diary.sessions;
    for (auto first = all.begin(); first != all.end();) {
        const LocalDate day = first->happened.date;
        const auto last = std::find_if(first, all.end(), [&](const auto& e) { return e.happened.date != day; });
        Sum sum;
        for (auto e = first; e != last; ++e)
            if (treats(e->payload.site).contains(site))
                sum.add(e->payload, usual);
        if (const auto treated = sum.on(day))
            out.push_back(*treated);
        for (auto e = first; e != last; ++e)
            usual.add(e->payload);
        first = last;
    }
    return out;
}

Evidence shortened(const Evidence& spell, double by)
{
    Evidence out = spell;
    for (Evidence::Piece& p : out.pieces) {
        p.from /= by;
        p.to /= by;
    }
    return out;
}

void DosePower::see(const Predictive& clock, const Evidence& spell, double dose)
{
    std::array<double, kPowers.size()> told{};
    double sum = 0;
    for (std::size_t i = 0; i < kPowers.size(); ++i) {
        const Evidence usual = shortened(spell, std::pow(dose, kPowers[i]));
        told[i] = m_chances[i] * chanceOf(usual, clock);
        sum += told[i];
    }
    if (!(sum > 0))
        return;
    for (std::size_t i = 0; i < told.size(); ++i)
        m_chances[i] = told[i] / sum;
}

double DosePower::power() const
{
    double out = 0;
    for (std::size_t i = 0; i < kPowers.size(); ++i)
        out += m_chances[i] * kPowers[i];
    return out;
}

double DosePower::lengthening(double dose) const { return dose == 1 ? 1 : std::pow(dose, power()); }

} // namespace firstdew::outlook
