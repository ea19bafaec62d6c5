#include "simulator/Life.h"

#include "protocol/CurrentAdvice.h"
#include "protocol/Screening.h"

#include <algorithm>

namespace firstdew::simulator {

using protocol::StepKind;
using situation::Advice;

namespace {

constexpr int kMinutesADay = 24 * 60;
constexpr long long kMorningMs = 6 * 60 * kMinuteMs;

std::vector<Payload> machineAndSites()
{
    Machine machine;
    machine.name = "a machine";
    machine.pulsed = true;
    machine.remote = true;
    return {Person{"Somebody", LocalDate(5000), {}, {}, {}}, machine, SiteUse{Site::Hands, true},
            SiteUse{Site::Feet, true}};
}

/// Writing down what was led, as the page does.
Session written(const bath::State& state, const std::string& bath)
{
    Session s;
    s.site = state.script.request.site;
    s.waveform = state.script.request.waveform;
    s.completed = state.phase == bath::Phase::Finished;
    s.comfortable = bath::mostComfortable(state);
    s.comfort = Comfort::Comfortable;
    s.bath = bath;
    return s;
}

} // namespace

Life::Life(const std::filesystem::path& folder, std::uint64_t seed, Counts& counts, Planted planted)
    : m_counts(counts), m_planted(planted), m_dice(seed), m_phone(folder / "record.db", m_dice, counts, planted)
{
    m_phone.hours.trueMs = (20'400 + m_dice.below(730)) * kDayMs;
    m_phone.hours.bootMs = m_phone.hours.trueMs - kDayMs;
    m_phone.hours.zone = static_cast<std::size_t>(m_dice.below(static_cast<long long>(kZones.size())));
    m_phone.alarms = m_dice.oneIn(2);
    m_people.push_back(m_phone.person());
}

void Life::begin()
{
    m_phone.open();
    m_phone.appendAll(machineAndSites());
    Course course;
    course.site = Site::Hands;
    course.start = m_phone.hours.local().date;
    m_phone.append(course);
    course.site = Site::Feet;
    m_phone.append(course);
    // The score before anything was treated: without one it is asked for where the app is open, never by an alarm.
    for (const DiarySite site : {DiarySite::Hands, DiarySite::Feet})
        m_phone.append(Hdss{site, 3});
    if (m_dice.oneIn(2))
        m_phone.append(ReminderSettings{{1200}, {1080}, {1320}, {420}, true, true});
    m_phone.look();
}

void Life::live(int days)
{
    begin();
    for (int i = 0; i < days; ++i)
        day();
    m_counts["phone-days"] += days;
    m_counts["reminders shown"] += m_phone.watcher.count;
    m_counts["writes torn"] += m_phone.disk().torn;
    m_counts["writes reordered"] += m_phone.disk().reordered;
    m_counts["writes lost"] += m_phone.disk().lost;
}

void Life::day()
{
    const long long midnight = m_phone.hours.trueMs;
    std::vector<long long> moments;
    for (long long i = m_dice.below(4); i >= 0; --i)
        moments.push_back(midnight + m_dice.below(kMinutesADay - 60) * kMinuteMs);
    std::sort(moments.begin(), moments.end());
    for (const long long moment : moments) {
        if (m_phone.hours.trueMs >= moment)
            continue; // a session took until then
        advanceTo(moment);
        event();
    }
    if (midnight + kDayMs > m_phone.hours.trueMs)
        advanceTo(midnight + kDayMs);
    if (m_dice.oneIn(m_planted == Planted::None ? 25 : 10) && !m_phone.off)
        m_phone.compareFaces();
}

/// Alarms ring on the way, half an hour at a time.
void Life::advanceTo(long long trueMs)
{
    while (m_phone.hours.trueMs < trueMs) {
        m_phone.hours.trueMs = std::min(trueMs, m_phone.hours.trueMs + 30 * kMinuteMs);
        m_phone.ring();
    }
}

/// What befalls a phone, then somebody takes it up.
void Life::event()
{
    misfortune();
    if (m_phone.off)
        return;
    trouble();
    use();
    surviving(m_dice.oneIn(2));
    m_phone.disk().mend();
    m_phone.look();
}

void Life::misfortune()
{
    Hours& h = m_phone.hours;
    if (m_phone.off && m_dice.oneIn(2)) {
        m_phone.off = false;
        h.bootMs = h.trueMs;
        h.sleptMs = 0;
        m_phone.look();
    } else if (!m_phone.off && m_dice.oneIn(60)) {
        m_phone.off = true;
        ++m_counts["switched off"];
    }
    if (m_dice.oneIn(80)) {
        h.zone = static_cast<std::size_t>(m_dice.below(static_cast<long long>(kZones.size())));
        ++m_counts["zones crossed"];
    }
    if (m_dice.oneIn(80)) {
        h.wrongMs = m_dice.oneIn(2) ? 0 : (m_dice.below(2 * kMinutesADay) - kMinutesADay) * kMinuteMs;
        ++m_counts["clocks set"];
    }
    if (m_dice.oneIn(100)) {
        m_phone.permitted = !m_phone.permitted;
        ++m_counts["permission changed"];
    }
    if (m_phone.off)
        return;
    if (m_dice.oneIn(150))
        m_phone.backUp();
    if (m_dice.oneIn(200))
        m_phone.restoreBackUp();
    if (m_dice.oneIn(150))
        m_phone.migrate();
    if (m_dice.oneIn(250) && m_people.size() < 3) {
        m_people.push_back(m_dice.id());
        m_phone.choose(m_people.back());
        m_phone.appendAll(machineAndSites());
        m_phone.appendAll({Hdss{DiarySite::Hands, 4}, Hdss{DiarySite::Feet, 4}});
        ++m_counts["people added"];
    } else if (m_people.size() > 1 && m_dice.oneIn(20)) {
        m_phone.choose(m_people[static_cast<std::size_t>(m_dice.below(static_cast<long long>(m_people.size())))]);
    }
}

/// A fault that waits for the disk to be used.
void Life::trouble()
{
    Disk& disk = m_phone.disk();
    if (m_dice.oneIn(10)) {
        disk.dieAfter(m_dice.below(60));
    } else if (m_dice.oneIn(15)) {
        disk.failAfter(m_dice.below(20), SQLITE_IOERR, false);
        ++m_counts["writes or syncs that fail"];
    } else if (m_dice.oneIn(15)) {
        disk.failAfter(m_dice.below(20), SQLITE_FULL, m_dice.oneIn(2));
        ++m_counts["full disks"];
    } else if (m_dice.oneIn(40)) {
        m_phone.crash(m_dice.oneIn(2));
    }
}

void Life::surviving(bool powerCut)
{
    if (m_phone.gone())
        m_phone.crash(powerCut);
}

void Life::use()
{
    if (m_dice.oneIn(6))
        answerNotice();
    m_phone.look();
    answerQuestions();
    checkIns();
    const auto situation = situation::assess(m_phone.diary());
    for (const auto& s : situation.sites) {
        if (situation::callsForSession(s.advice) && m_dice.percent(m_planted == Planted::None ? 15 : 60))
            treat(s.treatedAs);
        else if (s.stage == situation::Stage::Review && m_dice.oneIn(3))
            m_phone.append(ReviewDone{s.treatedAs, true});
        surviving(m_dice.oneIn(2));
    }
}

void Life::answerQuestions()
{
    const auto due = situation::assess(m_phone.diary()).screeningDue;
    if (due == protocol::ScreeningDue::None)
        return;
    Screening screening;
    screening.full = due == protocol::ScreeningDue::Full || !m_phone.diary().fullScreening;
    for (const auto row : allOf<ScreeningRow>())
        if (!knownByAge(row))
            screening.asked.insert(row);
    m_phone.append(screening);
    if (m_dice.oneIn(8)) {
        m_phone.append(Hdss{DiarySite::Hands, 1 + static_cast<int>(m_dice.below(4))});
    }
    surviving(m_dice.oneIn(2));
}

void Life::checkIns()
{
    for (const auto& used : m_phone.diary().sitesInUse()) {
        if (!m_dice.percent(60))
            continue;
        const auto now = m_phone.hours.local();
        const auto* earlier = m_phone.diary().checkInCorrectedAt(used.site, now);
        const std::string corrects = earlier != nullptr ? earlier->id : "";
        CheckIn report{used.site, m_dice.oneIn(6) ? static_cast<Level>(m_dice.below(4)) : Level::Dry, {}};
        if (m_dice.oneIn(10))
            report.with.insert(Circumstance::Heat);
        m_phone.append(report, now, corrects);
        surviving(m_dice.oneIn(2));
    }
    if (m_dice.oneIn(120)) {
        SideEffect skin;
        skin.site = DiarySite::Hands;
        skin.skin.insert(SkinFinding::Redness);
        m_phone.append(skin);
    }
}

/// Level or later, tapped on a notice: the app or a second process records it.
void Life::answerNotice()
{
    const auto standing = situation::todaysReminders(m_phone.diary(), m_phone.hours.local().at).standing;
    if (standing.empty())
        return;
    const auto& r = standing[static_cast<std::size_t>(m_dice.below(static_cast<long long>(standing.size())))];
    const LocalTime now = m_phone.hours.local();
    Payload answer = ReminderHandled{r.key, ReminderAction::Snoozed, now.plusMinutes(60)};
    if (m_dice.oneIn(4))
        answer = ReminderHandled{r.key, ReminderAction::Dismissed, {}};
    else if (r.kind == situation::ReminderKind::CheckIn && m_dice.oneIn(2))
        answer = CheckIn{*r.site, Level::Clammy, {}};
    ++m_counts["notices answered"];
    if (m_dice.oneIn(2))
        m_phone.appendElsewhere(answer, now);
    else
        m_phone.append(answer, now);
    surviving(m_dice.oneIn(2));
}

void Life::treat(Site site)
{
    if (m_dice.oneIn(4))
        site = m_dice.oneIn(2) ? Site::HandFoot : site;
    const auto waveform = m_dice.oneIn(2) ? Waveform::Direct : Waveform::Pulsed;
    const auto way = site == Site::Hands ? WayOfWorking::HandsUnder : WayOfWorking::FreeHand;
    const auto allowed = bath::mayPrepare(m_phone.diary(), site, waveform, way);
    if (!allowed) {
        ++m_counts["sessions refused by the gate"];
        return;
    }
    protocol::ScriptRequest request;
    request.site = site;
    request.waveform = waveform;
    request.age = AgeGroup::Adult;
    request.way = way;
    request.limit = allowed->limit;
    const auto script = protocol::scriptFor(request);
    mustHold(script.ok(), "no script for a session that may begin");
    auto state = bath::prepared(*script, protocol::firstAim(site, waveform, allowed->limit),
                                bath::earlierToday(m_phone.diary(), site));
    if (bath::enoughForToday(state))
        return;
    const std::string bath = m_dice.id();
    Preparation answers;
    answers.site = site;
    if (!m_phone.appendAll({answers, bath::preparationOf(state, bath)}))
        return;
    ++m_counts["sessions led"];
    state.last = state.kept = m_phone.hours.instant();
    m_phone.setLeading(true);
    lead(*script, bath, state);
    m_phone.setLeading(false);
}

/// What the person does in this step; mostly what the page offers.
bath::Event Life::next(const bath::State& state)
{
    if (state.phase == bath::Phase::AwaitingMeanwhile)
        return {BathEventKind::Resumed, {}, static_cast<Meanwhile>(m_dice.below(m_dice.oneIn(6) ? 4 : 2))};
    if (m_dice.oneIn(150))
        return {m_dice.oneIn(2) ? BathEventKind::StopPressed : BathEventKind::OutOfWater, {}, {}};
    if (m_dice.oneIn(60))
        return {m_dice.oneIn(2) ? BathEventKind::Discomfort : BathEventKind::StopTakenBack, {}, {}};
    if (m_dice.oneIn(12))
        return {BathEventKind::Reading, Milliamps{static_cast<double>(m_dice.below(26))}, {}};
    const auto& step = state.script.steps[state.step];
    const auto main = bath::mainEvent(state);
    if (main && !(step.kind == StepKind::Hold) && m_dice.oneIn(3))
        return {*main, {}, {}};
    return {BathEventKind::Tick, {}, {}};
}

/// Time until the next event of a session: ticks, a call, a sleep in which the steady clock stands, a frozen process.
long long Life::wait(bath::State&)
{
    Hours& h = m_phone.hours;
    if (m_dice.oneIn(400)) {
        const long long gap = 1000 * (15 + m_dice.below(900));
        h.sleptMs += m_dice.oneIn(2) ? gap : 0;
        ++m_counts[m_dice.oneIn(2) ? "sleeps and freezes in a session" : "calls in a session"];
        return gap;
    }
    if (m_dice.oneIn(500)) {
        h.wrongMs += (m_dice.below(121) - 60) * 1000;
        ++m_counts["clocks set in a session"];
    }
    return 9'500;
}

bool Life::keep(std::vector<Payload>& waiting)
{
    if (waiting.empty() || !m_phone.appendAll(waiting))
        return false;
    waiting.clear();
    return true;
}

void Life::lead(const protocol::Script&, const std::string& bath, bath::State state)
{
    Onlooker onlooker;
    std::vector<Payload> waiting;
    int sequence = 0;
    const auto keepAll = [&](const std::vector<bath::Kept>& events) {
        for (const auto& [event, at] : events)
            waiting.push_back(
                BathEvent{bath, sequence++, event.kind, event.reading, event.meanwhile, at.wallMs, at.monotonicMs});
    };
    bath::Event event{BathEventKind::Begin, {}, {}};
    for (int n = 0; n < 1200; ++n) {
        auto out = bath::step(state, event, m_phone.hours.instant());
        if (out) {
            bath::State after = out->state;
            if (m_planted == Planted::TrustsTheClock && event.kind == BathEventKind::Tick && m_dice.oneIn(300))
                after.step = std::min(after.step + 1, after.script.steps.size() - 1);
            onlooker.sees(state, event, after);
            state = std::move(after);
            keepAll(out->keep);
        }
        if (waiting.size() > 1 || sequence < 3 || m_dice.oneIn(3)) // the app writes a moment later
            (void)keep(waiting);
        if (m_phone.gone() || m_dice.oneIn(800)) { // killed in the middle: it comes back and asks
            m_phone.crash(m_dice.oneIn(3));
            ++m_counts["killed in a session"];
            waiting.clear();
            const auto led = m_phone.diary().ledSessions.find(bath);
            if (led == m_phone.diary().ledSessions.end() || !led->second.prepared)
                return;
            const auto back = bath::replay(*led->second.prepared, led->second.events);
            mustHold(back.ok(), "a session does not come back");
            state = *back;
            if (state.step == 0)
                onlooker.mayFlow = false; // nothing of it was kept: the check list and the switch-on ask for zero
            mustHold(state.current != bath::Current::Zero || !onlooker.mayFlow ||
                         state.phase > bath::Phase::AwaitingMeanwhile,
                     "back from a kill, the current is taken for zero");
            sequence = led->second.events.empty() ? 0 : led->second.events.back().sequence + 1;
            if (state.phase == bath::Phase::AwaitingMeanwhile)
                keepAll({{{BathEventKind::Away, {}, {}}, state.last}});
        }
        if (m_dice.oneIn(40) || m_planted == Planted::RingsInSession)
            m_phone.look();
        if (state.phase == bath::Phase::Finished || state.phase == bath::Phase::Stopped)
            break;
        m_phone.hours.trueMs += wait(state);
        event = next(state);
    }
    (void)keep(waiting);
    surviving(false);
    m_phone.disk().mend();
    ++m_counts[state.phase == bath::Phase::Finished ? "sessions finished" : "sessions broken off"];
    m_phone.append(written(state, bath));
    surviving(m_dice.oneIn(2));
}

} // namespace firstdew::simulator
