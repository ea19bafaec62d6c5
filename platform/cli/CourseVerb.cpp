#include "Verb.h"

#include "protocol/Course.h"

#include <fmt/format.h>
#include <memory>

namespace firstdew::cli {

namespace {

using namespace facts;
using nlohmann::json;
using protocol::CoursePlan;
using protocol::CourseRequest;
using protocol::CourseState;
using protocol::PlannedSession;
using protocol::ShiftReason;

struct Options {
    std::string plan, start, today, pace;
    std::vector<int> days;
    std::vector<std::string> free, away, done, missed, moves;
};

/// A request, and what had to be supposed to make it.
struct Question {
    CourseRequest request;
    bool todaySupposed = false;
    bool doneSupposed = false;
    std::vector<LocalDate> notSessionDays;
};

constexpr std::array<std::string_view, 7> kWeekdays{"Monday", "Tuesday",  "Wednesday", "Thursday",
                                                    "Friday", "Saturday", "Sunday"};

std::string_view weekdayName(LocalDate d) { return kWeekdays[static_cast<std::size_t>(d.weekday())]; }

std::string named(LocalDate d) { return fmt::format("{} {}", weekdayName(d), d.iso()); }

std::string days(int count) { return fmt::format("{} day{}", count, count == 1 ? "" : "s"); }

std::vector<LocalDate> datesOption(const std::string& option, const std::vector<std::string>& texts)
{
    std::vector<LocalDate> out;
    for (const auto& t : texts)
        out.push_back(dateOption(option, t));
    return out;
}

std::pair<LocalDate, LocalDate> rangeOption(const std::string& text)
{
    const auto dots = text.find("..");
    if (dots == std::string::npos) {
        const LocalDate one = dateOption("--away", text);
        return {one, one};
    }
    return {dateOption("--away", text.substr(0, dots)), dateOption("--away", text.substr(dots + 2))};
}

std::pair<int, LocalDate> moveOption(const std::string& text)
{
    const auto sign = text.find('=');
    const std::string number = text.substr(0, sign);
    if (sign == std::string::npos || number.empty() || number.size() > 4 ||
        number.find_first_not_of("0123456789") != std::string::npos)
        throw Usage{"--move: '" + text + "' is no move; write NUMBER=YYYY-MM-DD"};
    return {std::stoi(number), dateOption("--move", text.substr(sign + 1))};
}

CourseTemplate templateOption(const Options& o)
{
    if (o.plan.empty() && !o.days.empty())
        return CourseTemplate::Prescribed;
    const auto plan = o.plan.empty() ? CourseTemplate::Seven : tokenOption<CourseTemplate>("--template", o.plan);
    if (plan != CourseTemplate::Prescribed && !o.days.empty())
        throw Usage{"--days: the named course has days of its own; leave out --days, or say --template prescribed"};
    return plan;
}

Question questionOf(const Options& o)
{
    Question out;
    CourseRequest& q = out.request;
    q.plan = templateOption(o);
    q.days = o.days;
    q.start = dateOption("--start", o.start);
    for (const auto& w : o.free)
        q.free.insert(tokenOption<Weekday>("--free", w));
    for (const auto& a : o.away)
        q.away.push_back(rangeOption(a));
    q.done = datesOption("--done", o.done);
    q.missed = datesOption("--missed", o.missed);
    if (!o.pace.empty())
        q.pace = tokenOption<Pace>("--pace", o.pace);
    for (const auto& m : o.moves)
        q.fixed.push_back(moveOption(m));

    // The plan must not depend on the day it is asked for: without --today it is seen from the last day named.
    out.todaySupposed = o.today.empty();
    q.today = q.start;
    for (const auto* list : {&q.done, &q.missed})
        for (const LocalDate d : *list)
            q.today = std::max(q.today, d);
    if (!o.today.empty())
        q.today = dateOption("--today", o.today);

    if (q.done.empty()) {
        const auto soFar = orRefuse(protocol::courseSoFar(q));
        q.done = soFar.done;
        out.doneSupposed = !q.done.empty();
        out.notSessionDays = soFar.notSessionDays;
    }
    return out;
}

std::string because(const CourseRequest& q, const PlannedSession& s)
{
    const LocalDate wanted = s.date - s.shift;
    switch (s.why) {
    case ShiftReason::None: return {};
    case ShiftReason::Past: return fmt::format("{} is over, without a session", named(wanted));
    case ShiftReason::Missed: return fmt::format("missed on {}", named(wanted));
    case ShiftReason::Away: return fmt::format("away on {}", named(wanted));
    case ShiftReason::WeekdayNotFree: return fmt::format("{} is not one of the free weekdays", named(wanted));
    case ShiftReason::HasSession: return fmt::format("{} has its session already", named(wanted));
    case ShiftReason::MakesRoom:
        return fmt::format("{} would leave no room for the others, {} and in order", named(wanted),
                           q.pace == Pace::DayBetween ? "a day between" : "one a day");
    case ShiftReason::ByHand: return "put on this day by hand";
    }
    return {};
}

std::string shiftText(int shift)
{
    return shift == 0 ? "as in the course"
                      : fmt::format("{} {}", days(std::abs(shift)), shift > 0 ? "later" : "earlier");
}

std::string crowdingNote(const protocol::Crowding& crowding)
{
    const CoursePlan& other = crowding.dayBetween;
    return fmt::format("{} sessions stand on consecutive days; with --pace day-between the last one is on {}{}",
                       crowding.inARow, named(other.sessions.back().date),
                       other.fits ? std::string(", inside the window")
                                  : fmt::format(", {} past the window", days(other.overrunDays)));
}

std::vector<std::string> notesOf(const Question& q, const CoursePlan& plan)
{
    std::vector<std::string> out;
    const CourseRequest& r = q.request;
    if (q.todaySupposed)
        out.push_back(fmt::format("no --today was given: the plan is seen from {}", named(r.today)));
    if (q.doneSupposed)
        out.push_back("no --done was given: every session day before today that is not named missed is taken as done; "
                      "name the days with --done if that is not so");
    for (const LocalDate d : q.notSessionDays)
        out.push_back(fmt::format("{} is named missed, but no session stood there", named(d)));
    if (r.done.size() > plan.sessions.size())
        out.push_back(
            fmt::format("{} sessions were done, more than the {} of the course", r.done.size(), plan.sessions.size()));
    if (const auto crowding = protocol::crowdingOf(r, plan))
        out.push_back(crowdingNote(*crowding));
    if (!plan.fits)
        out.push_back(fmt::format(
            "the window to {} cannot be kept: the last session lies {} past it. Ask the prescriber whether to go on or "
            "begin the course again",
            named(plan.windowEnd), days(plan.overrunDays)));
    return out;
}

json sessionJson(const PlannedSession& s)
{
    return {{"number", s.number},      {"template_day", s.templateDay},
            {"date", s.date.iso()},    {"weekday", token(s.date.weekday())},
            {"state", token(s.state)}, {"shift", s.shift},
            {"why", token(s.why)}};
}

std::string planText(const CourseRequest& q, const CoursePlan& plan)
{
    std::string out = fmt::format("first course \"{}\": {} sessions, day 1 is {}, today {}\n", token(q.plan),
                                  plan.sessions.size(), named(q.start), named(q.today));
    const PlannedSession* next = nullptr;
    for (const PlannedSession& s : plan.sessions) {
        const bool planned = s.state == CourseState::Planned;
        const std::string reason = because(q, s);
        out += fmt::format("  {:>2}  {} {:<9}  {:<7}  day {}{}{}\n", s.number, s.date.iso(), weekdayName(s.date),
                           token(s.state), s.templateDay, planned || s.shift != 0 ? ", " + shiftText(s.shift) : "",
                           reason.empty() ? "" : ": " + reason);
        if (planned && next == nullptr)
            next = &s;
    }
    if (next == nullptr)
        return out + "every session is done: look at the result now, and speak with the prescriber\n";
    out += fmt::format("next session: {}{}\n", named(next->date), next->date == q.today ? ", which is today" : "");
    if (plan.fits)
        out += fmt::format("every session lies inside the window, which ends on {}\n", named(plan.windowEnd));
    out += fmt::format("of all plans with {}, in order and on open days, this lies nearest to the course "
                       "(shifts squared: {} days²; on ties the earlier)\n",
                       q.pace == Pace::DayBetween ? "a day between sessions" : "one session a day", plan.shiftCost);
    return out;
}

Answer course(const Options& o)
{
    const Question q = questionOf(o);
    const CoursePlan plan = orRefuse(protocol::planCourse(q.request));
    const auto notes = notesOf(q, plan);
    Answer answer;
    answer.json = {{"template", token(q.request.plan)},  {"start", q.request.start.iso()},
                   {"today", q.request.today.iso()},     {"sessions", json::array()},
                   {"window_end", plan.windowEnd.iso()}, {"fits", plan.fits},
                   {"overrun_days", plan.overrunDays},   {"shift_cost", plan.shiftCost},
                   {"done_supposed", q.doneSupposed},    {"notes", notes},
                   {"pace", token(q.request.pace)}};
    answer.json["missed"] = json::array();
    for (const LocalDate d : q.request.missed)
        answer.json["missed"].push_back(d.iso());
    for (const PlannedSession& s : plan.sessions)
        answer.json["sessions"].push_back(sessionJson(s));
    answer.text = planText(q.request, plan);
    for (const auto& note : notes)
        answer.text += "note: " + note + "\n";
    answer.text +=
        "Before each session: the short health question, the machine's own instructions, and your clinician's "
        "word come first.\n";
    return answer;
}

const Verb verb("course", "plan a first course, or plan it again after a change", [](CLI::App& sub) {
    auto o = std::make_shared<Options>();
    sub.add_option("--template", o->plan, anyOf<CourseTemplate>() + " (seven)");
    sub.add_option("--days", o->days, "prescribed days, counted from day 1: 1,2,4,…")->delimiter(',');
    sub.add_option("--start", o->start, "day 1, YYYY-MM-DD")->required();
    sub.add_option("--free", o->free, "weekdays that suit: mon,wed,… (all)")->delimiter(',');
    sub.add_option("--away", o->away, "days away, D..D or D; may be given again")->delimiter(',');
    sub.add_option("--done", o->done, "a day with a session; may be given again")->delimiter(',');
    sub.add_option("--missed", o->missed, "a day whose session was missed; may be given again")->delimiter(',');
    sub.add_option("--move", o->moves, "put a session on a day: NUMBER=D; may be given again")->delimiter(',');
    sub.add_option("--pace", o->pace, anyOf<Pace>() + ": where sessions crowd (keep-window)");
    sub.add_option("--today", o->today, "the day the plan is seen from (the last day named)");
    return [o] { return course(*o); };
});

} // namespace

} // namespace firstdew::cli
