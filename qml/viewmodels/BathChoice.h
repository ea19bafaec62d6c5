#pragma once

#include "SessionValues.h"
#include "Store.h"
#ifndef Q_MOC_RUN // moc of Qt 6.4 cannot read <concepts>, which these bring in
#include "protocol/CurrentAdvice.h"
#include "protocol/Limits.h"
#include "protocol/Script.h"
#endif

namespace firstdew::viewmodels {

/// What the next session is to be: where, with which current, who taps, which side first; and what follows from it.
class BathChoice {
public:
    /// `speakers`: what says the prompts now.
    BathChoice(const Store& store, std::function<bool()> screenReader, std::function<protocol::Speakers()> speakers)
        : m_store(store), m_screenReader(std::move(screenReader)), m_speakers(std::move(speakers))
    {
        propose();
    }

    [[nodiscard]] facts::Site site() const { return m_site; }
    [[nodiscard]] facts::Waveform waveform() const { return m_waveform; }
    [[nodiscard]] facts::WayOfWorking way() const { return m_way; }
    [[nodiscard]] facts::Side side() const { return m_side; }
    void setSite(facts::Site site);
    void setWaveform(facts::Waveform waveform);
    void setWay(facts::WayOfWorking way);
    void setSide(facts::Side side);
    /// As a session that was come back to has it.
    void restore(const facts::BathPrepared& prepared);
    /// Picks what the person most likely wants: the site that matters now unless one was chosen, the rest as last time
    /// there unless it was picked now.
    void propose();
    /// The session is over: the next one is chosen anew.
    void forget();

    /// The lines to choose from.
    [[nodiscard]] QList<ui::SiteChoice> sites() const;
    [[nodiscard]] QList<ui::WaveformChoice> waveforms() const;
    [[nodiscard]] QList<ui::WayChoice> ways() const;

    [[nodiscard]] facts::Machine machine() const;
    /// What the phone does for the person now. A screen reader may be switched on at any time.
    [[nodiscard]] protocol::Phone phone() const;
    /// Why the chosen way of working is not open.
    [[nodiscard]] std::optional<facts::Error> refusalOfWay() const;
    [[nodiscard]] protocol::LimitAnswer limit() const { return limitWith(m_waveform); }
    [[nodiscard]] protocol::CurrentAdvice advice() const;
    [[nodiscard]] facts::Result<protocol::Script> script() const;
    /// How long a session is this time in a comparison of lengths; empty without one.
    [[nodiscard]] QString compared() const;
    /// Who gave the care sheet that counts; empty without one.
    [[nodiscard]] std::string giver() const;

private:
    [[nodiscard]] protocol::LimitAnswer limitWith(facts::Waveform waveform) const;
    void forgetPicks();

    const Store& m_store;
    std::function<bool()> m_screenReader;
    std::function<protocol::Speakers()> m_speakers;
    facts::Site m_site{};
    facts::Waveform m_waveform{};
    facts::WayOfWorking m_way{};
    facts::Side m_side{};
    bool m_chosen = false;
    std::optional<facts::Waveform> m_pickedWaveform;
    std::optional<facts::WayOfWorking> m_pickedWay;
    std::optional<facts::Side> m_pickedSide;
};

} // namespace firstdew::viewmodels
