#include "bath/Ahead.h"
#include "bath/Tick.h"
#include "core/Build.h"
#include "diary/Reader.h"
#include "journal/Journal.h"
#include "situation/Reminders.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <fmt/format.h>
#include <fstream>
#include <random>
#include <string_view>

// What a day and a session ask of a phone: the core as the app drives it (Store, Reminding and RunningBath), without
// its interface. Writes are counted by the kernel, wake-ups by the times that core asks for; tests/bench/counts.py
// counts the instructions from outside. Two runs do the same: clock and dice stand still.

namespace {

using namespace firstdew;
using namespace firstdew::facts;
using bath::Event;
using protocol::StepKind;

constexpr int kYears = 2;
constexpr int kFree = 12 * 60; ///< noon, when nobody has been asked yet
const char* const kPerson = "0123456789abcdef0123456789abcdef";

[[noreturn]] void fail(const std::string& why)
{
    std::fprintf(stderr, "counted: %s\n", why.c_str());
    std::exit(1);
}

template <class T>
T orFail(Result<T> result)
{
    if (!result)
        fail(result.error().input + ": " + result.error().message);
    return std::move(result.value());
}

/// Ids as scattered as those that are drawn, and the same in each run: where they fall decides how much is written.
std::string nextId()
{
    static std::mt19937_64 dice(1);
    return fmt::format("{:016x}{:016x}", dice(), dice());
}

LocalDate firstDay() { return build::day("2026-01-01"); }

/// Somebody who treats hands and feet and answers every day, until the day before the first that is counted.
std::vector<Fact> yearsBefore()
{
    build::Facts d;
    const LocalDate start = firstDay() - kYears * 365;
    d.adult().screened(start);
    for (const auto site : {Site::Hands, Site::Feet})
        d.add(SiteUse{site, true}, start);
    for (int i = 0; i < kYears * 365; ++i)
        for (const auto site : {Site::Hands, Site::Feet}) {
            const int turn = (i + (site == Site::Feet ? 5 : 0)) % 12;
            d.checkIn(site == Site::Hands ? DiarySite::Hands : DiarySite::Feet, start + i,
                      turn == 0 ? Level::Clammy : Level::Dry);
            if (turn == 0)
                d.session(site, start + i);
        }
    d.screened(firstDay() - 1);
    auto facts = d.facts();
    for (Fact& fact : facts) {
        fact.person = kPerson;
        fact.id = nextId();
    }
    return facts;
}

/// The open app: what StoreContent holds.
struct Open {
    journal::Journal journal;
    diary::Reader reader;
    situation::Situation situation;
    LocalTime now;

    Open(const std::string& file, LocalTime at)
        : journal(orFail(journal::Journal::open(file))), reader(orFail(journal.readAll()), kPerson, at.date), now(at)
    {
        situation = situation::assess(reader.diary());
    }

    void append(std::vector<Payload> payloads)
    {
        std::vector<Fact> facts;
        for (auto& payload : payloads)
            facts.push_back({nextId(), kPerson, now, 0, "", std::move(payload)});
        const auto ids = orFail(journal.appendAll(facts));
        for (std::size_t i = 0; i < facts.size(); ++i) {
            facts[i].id = ids[i];
            reader.add(std::move(facts[i]));
        }
    }

    /// Times from now until midnight at which the system is asked to ring.
    long long plan()
    {
        (void)situation::todaysReminders(reader.diary(), now.at);
        const auto ahead = situation::upcomingReminders(reader.diary(), now.at);
        std::vector<LocalTime> times;
        for (const auto& reminder : ahead)
            if (reminder.at.date == now.date)
                times.push_back(reminder.at);
        std::ranges::sort(times);
        return std::ranges::unique(times).begin() - times.begin();
    }
};

/// Looked at once; the reminder rings, and its notice is answered: the app was closed both times.
long long day(const std::string& file, LocalDate date)
{
    long long wakes = 0;
    LocalTime asked{date, {kFree}};
    {
        Open app(file, asked);
        wakes = app.plan();
        const auto ahead = situation::upcomingReminders(app.reader.diary(), asked.at);
        if (ahead.empty() || ahead.front().at.date != date)
            fail("no reminder on " + date.iso());
        asked = ahead.front().at;
    }
    Open app(file, asked);
    if (situation::dueReminders(app.reader.diary(), asked.at).empty())
        fail("nothing due on " + date.iso());
    app.plan();
    for (const auto site : {DiarySite::Hands, DiarySite::Feet}) {
        app.append({CheckIn{site, Level::Dry, {}}});
        app.situation = situation::assess(app.reader.diary());
        app.plan();
    }
    return wakes;
}

/// A session of the hands with one hand free, led as the app leads it: ticks, a reading when it is asked for.
class Led {
public:
    explicit Led(Open& app) : m_app(app)
    {
        app.append({Screening{false, {}, {}}}); // nothing has changed
        protocol::ScriptRequest request;
        request.site = Site::Feet;
        request.limit =
            orFail(bath::mayPrepare(app.reader.diary(), Site::Feet, Waveform::Direct, WayOfWorking::FreeHand)).limit;
        m_state = bath::prepared(orFail(protocol::scriptFor(request)), {14},
                                 bath::earlierToday(app.reader.diary(), Site::Feet));
        m_state.last = m_state.kept = m_now;
        Preparation answers;
        answers.site = Site::Feet;
        app.append({answers, bath::preparationOf(m_state, kBath)});
    }

    void lead()
    {
        for (const auto kind : {BathEventKind::Begin, BathEventKind::SwitchedOn})
            send({kind, {}, {}});
        while (m_state.phase == bath::Phase::Running) {
            const auto ms = bath::untilNextTick(m_state);
            m_now.monotonicMs += ms;
            m_now.wallMs += ms;
            ++wakes;
            if (m_writeAt != 0 && m_now.monotonicMs >= m_writeAt)
                write();
            send({BathEventKind::Tick, {}, {}});
            const auto kind = m_state.script.steps[m_state.step].kind;
            if (const auto event = bath::mainEvent(m_state); event && ready(kind))
                send({*event, {}, {}});
            if (m_asksMeter && kind == StepKind::Hold) {
                m_asksMeter = false;
                send({BathEventKind::Reading, Milliamps{10}, {}});
            }
        }
        write();
        if (m_state.phase != bath::Phase::Finished)
            fail("the session did not come to its end");
        Session done;
        done.site = Site::Feet;
        done.comfortable = bath::mostComfortable(m_state);
        done.comfort = Comfort::Comfortable;
        done.bath = kBath;
        m_app.append({done});
        m_app.situation = situation::assess(m_app.reader.diary());
        m_app.plan();
    }

    long long wakes = 0;
    [[nodiscard]] long long minutes() const { return m_now.monotonicMs / 60'000; }

private:
    static constexpr const char* kBath = "00000000000000000000000000000001";
    /// What happened is written a moment later (RunningBath).
    static constexpr long long kWriteAfterMs = 250;
    Open& m_app;
    bath::State m_state;
    Instant m_now{1'767'300'000'000, 0};
    std::vector<Payload> m_waiting;
    long long m_writeAt = 0;
    int m_sequence = 0;
    bool m_asksMeter = false;

    /// A hold runs its time; whatever else waits for a person is done after two minutes.
    [[nodiscard]] bool ready(StepKind kind) const
    {
        constexpr long long kHandMs = 120'000;
        return kind != StepKind::Hold && m_state.stepElapsedMs >= kHandMs;
    }

    void send(const Event& event)
    {
        auto out = orFail(bath::step(m_state, event, m_now));
        const bool turns = out.state.phase != m_state.phase;
        m_state = std::move(out.state);
        for (const auto& effect : out.effects)
            m_asksMeter = m_asksMeter || effect.kind == bath::EffectKind::AskMeter;
        if (event.kind != BathEventKind::Tick || turns)
            (void)bath::ahead(m_state, m_now);
        for (const auto& [kept, at] : out.keep)
            m_waiting.push_back(
                BathEvent{kBath, m_sequence++, kept.kind, kept.reading, kept.meanwhile, at.wallMs, at.monotonicMs});
        if (!m_waiting.empty() && m_writeAt == 0)
            m_writeAt = m_now.monotonicMs + kWriteAfterMs;
    }

    void write()
    {
        m_writeAt = 0;
        if (m_waiting.empty())
            return;
        m_app.append(std::move(m_waiting));
        m_waiting.clear();
        ++wakes;
    }
};

/// Bytes that this process has handed to write calls so far.
long long bytesWritten()
{
    std::ifstream io("/proc/self/io");
    std::string name;
    for (long long value = 0; io >> name >> value;)
        if (name == "wchar:")
            return value;
    fail("/proc/self/io says nothing");
}

} // namespace

int main(int argc, char** argv)
{
    const std::string_view what = argc > 2 ? argv[1] : "";
    const int times = argc > 3 ? std::atoi(argv[3]) : 0;
    if ((what != "make" && what != "day" && what != "session") || times < 0) {
        std::fprintf(stderr,
                     "usage: counted make STORE | day STORE DAYS | session STORE SESSIONS     0 only opens it\n");
        return 2;
    }
    const std::string file = argv[2];
    const auto before = yearsBefore(); // in every run, since it draws the first ids
    if (what == "make") {
        auto journal = orFail(journal::Journal::open(file));
        (void)orFail(journal.appendAll(before));
        return 0;
    }
    long long wakes = 0;
    long long minutes = 0;
    {
        Open opened(file, {firstDay() - 1, {kFree}}); // what the start of a process costs is in every run
    }
    const long long written = bytesWritten();
    for (int i = 0; i < times; ++i)
        if (what == "day") {
            wakes += day(file, firstDay() + i);
        } else {
            Open app(file, {firstDay() + i, {kFree}});
            Led led(app);
            led.lead();
            wakes += led.wakes;
            minutes += led.minutes();
        }
    std::printf("bytes_written %lld\nwake-ups %lld\nminutes %lld\n", bytesWritten() - written, wakes, minutes);
    return 0;
}
