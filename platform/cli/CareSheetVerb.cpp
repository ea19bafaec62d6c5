#include "Files.h"
#include "Recording.h"

#include "diary/Diary.h"
#include "exchange/CareSheetFile.h"
#include "exchange/QrCode.h"
#include "journal/People.h"
#include "protocol/Course.h"
#include "protocol/Limits.h"
#include "protocol/SheetCourse.h"
#include "protocol/SheetEffect.h"

#include <fmt/format.h>
#include <memory>

namespace firstdew::cli {

namespace {

using namespace facts;

struct Options {
    std::string file, store, person, age = "adult", qr;
    std::string who, given, plan, waveform, review, notes, out;
    std::vector<std::string> sites;
    std::vector<int> days;
    std::string atNoResponse, contact;
    std::optional<double> direct, pulsed, pad, level;
    std::optional<int> raise, lower, swapping;
    bool force = false, loosen = false;
};

template <class Unit, class N>
std::optional<Unit> unit(const std::optional<N>& number)
{
    return number ? std::optional<Unit>(Unit{*number}) : std::nullopt;
}

CareSheet sheetOf(const Options& o)
{
    CareSheet s;
    s.who = o.who;
    s.given = dateOption("--given", o.given);
    for (const auto& w : o.sites)
        s.sites.insert(tokenOption<Site>("--sites", w));
    if (!o.plan.empty())
        s.plan = tokenOption<CourseTemplate>("--plan", o.plan);
    s.days = o.days;
    if (!o.days.empty() && o.plan.empty())
        s.plan = CourseTemplate::Prescribed;
    if (!o.waveform.empty())
        s.waveform = tokenOption<Waveform>("--waveform", o.waveform);
    s.directLimit = unit<Milliamps>(o.direct);
    s.pulsedLimit = unit<Milliamps>(o.pulsed);
    s.raise = unit<Seconds>(o.raise);
    s.lower = unit<Seconds>(o.lower);
    s.swapping = unit<Seconds>(o.swapping);
    if (!o.review.empty())
        s.review = dateOption("--review", o.review);
    s.notes = o.notes;
    s.pad = unit<SquareCentimetres>(o.pad);
    s.atNoResponse = o.atNoResponse;
    if (!o.contact.empty())
        s.contact = o.contact;
    s.level = unit<Milliamps>(o.level);
    return s;
}

AgeGroup ageOf(const Options& o) { return tokenOption<AgeGroup>("--age", o.age); }

nlohmann::json jsonOf(const CareSheet& sheet) { return nlohmann::json::parse(exchange::careSheetLine(sheet)); }

Answer make(const Options& o)
{
    checkOut(o.out, "", o.force);
    const CareSheet sheet = sheetOf(o);
    (void)orRefuse(exchange::checkCareSheet(sheet, ageOf(o)));
    const std::string text = exchange::careSheetJson(sheet);
    // Read back before it is handed on: what was typed may still be out of a field's range.
    (void)orRefuse(exchange::readCareSheet(o.out, text, ageOf(o)));
    writeWhole(o.out, text, o.force);
    return {fmt::format("care sheet written to {}\n", o.out), jsonOf(sheet)};
}

Answer check(const Options& o)
{
    const auto sheet =
        orRefuse(exchange::readCareSheet(o.file, readWhole(o.file, exchange::kMostCareSheetBytes), ageOf(o)));
    return {o.file + ": may be used\n", jsonOf(sheet)};
}

/// The sheet judged for the person it is for, beside the one that stands now.
struct Meeting {
    CareSheet sheet;
    std::vector<protocol::SheetEffect> effects;
    std::string person;
    std::vector<protocol::PrescribedCourse> courses;
    std::vector<Payload> toRecord;
};

Meeting meet(const Options& o, bool toWrite)
{
    if (o.store.empty())
        return {orRefuse(exchange::readCareSheet(o.file, readWhole(o.file, exchange::kMostCareSheetBytes), ageOf(o))),
                {},
                {},
                {},
                {}};
    auto open = toWrite ? journal::Journal::openExisting : journal::Journal::openToRead;
    const auto facts = orRefuse(orRefuse(open(o.store)).readAll());
    const std::string known = personOf(facts, o.person);
    const std::string person = known.empty() ? journal::drawId() : known;
    const LocalDate today = localNow().date;
    const auto diary = diary::readDiary(facts, person, today);
    const auto age = protocol::ageGroupOn(diary.person ? diary.person->birth : std::nullopt, today);
    auto sheet = orRefuse(exchange::readCareSheet(o.file, readWhole(o.file, exchange::kMostCareSheetBytes), age));
    auto effects = protocol::effectsOf(sheet, diary);
    auto courses = protocol::coursesOf(sheet, diary);
    auto toRecord = protocol::acceptanceOf(sheet, diary);
    return {std::move(sheet), std::move(effects), person, std::move(courses), std::move(toRecord)};
}

/// A field as the file writes it, with its unit where it has one; "(not set)" where the sheet leaves it open.
std::string written(const nlohmann::json& sheet, protocol::SheetField field)
{
    using protocol::SheetField;
    const auto at = sheet.find(token(field));
    if (at == sheet.end() || at->is_null() || at->empty() || *at == "")
        return "(not set)";
    switch (field) {
    case SheetField::Pad: return fmt::format("{:g} cm²", at->get<double>());
    case SheetField::Level:
    case SheetField::DirectLimit:
    case SheetField::PulsedLimit: return fmt::format("{:g} mA", at->get<double>());
    case SheetField::Raise:
    case SheetField::Lower:
    case SheetField::Swapping: return fmt::format("{} s", at->get<int>());
    case SheetField::Sites: return fmt::format("{}", fmt::join(at->get<std::vector<std::string>>(), ", "));
    case SheetField::Days: return fmt::format("{}", fmt::join(at->get<std::vector<int>>(), ", "));
    default: return at->get<std::string>();
    }
}

nlohmann::json valueIn(const nlohmann::json& sheet, protocol::SheetField field)
{
    const auto at = sheet.find(token(field));
    return at == sheet.end() ? nlohmann::json() : *at;
}

void tellEffects(const std::vector<protocol::SheetEffect>& effects, Answer& answer)
{
    answer.text += effects.empty() ? "changes nothing\n" : "";
    for (const auto& effect : effects) {
        std::vector<std::string_view> sites;
        for (const Site site : effect.sites)
            sites.push_back(token(site));
        answer.text += fmt::format("changes for {}:\n", fmt::join(sites, ", "));
        const auto before = effect.before ? jsonOf(*effect.before) : nlohmann::json::object();
        for (const auto& [field, loosens] : effect.changes) {
            answer.text += fmt::format("  {}: {} -> {}{}\n", token(field), written(before, field),
                                       written(answer.json, field), loosens ? "  ALLOWS MORE" : "");
            answer.json["changes"].push_back({{"field", token(field)},
                                              {"sites", sites},
                                              {"before", valueIn(before, field)},
                                              {"after", valueIn(answer.json, field)},
                                              {"loosens", loosens}});
        }
    }
}

void tellCourses(const std::vector<protocol::PrescribedCourse>& courses, Answer& answer)
{
    for (const auto& [course, goesOn, replaces] : courses) {
        const auto plan = protocol::templateDays(course.plan, course.days, course.start);
        const std::size_t count = plan ? plan->days.size() : 0;
        answer.text += goesOn ? fmt::format("the course for {} goes on\n", token(course.site))
                              : fmt::format("a course of {} sessions for {} begins{}\n", count, token(course.site),
                                            replaces ? ", in place of the one that runs" : "");
        answer.json["courses"].push_back({{"site", token(course.site)},
                                          {"plan", token(course.plan)},
                                          {"sessions", count},
                                          {"start", course.start.iso()},
                                          {"goes_on", goesOn},
                                          {"replaces", replaces}});
    }
}

Answer show(const Options& o)
{
    if (!o.qr.empty())
        checkOut(o.qr, o.store, o.force);
    const auto [sheet, effects, person, courses, toRecord] = meet(o, false);
    Answer answer{"", jsonOf(sheet)};
    for (const auto field : allOf<protocol::SheetField>())
        if (const auto text = written(answer.json, field); text != "(not set)")
            answer.text += fmt::format("{:16} {}\n", token(field), text);
    if (!o.store.empty())
        tellEffects(effects, answer);
    tellCourses(courses, answer);
    if (!o.qr.empty())
        writeWhole(o.qr, exchange::qrSvg(orRefuse(exchange::qrCodeOf(exchange::careSheetLine(sheet)))), o.force);
    return answer;
}

Answer accept(const Options& o)
{
    const auto [sheet, effects, person, courses, toRecord] = meet(o, true);
    const LocalTime now = localNow();
    if (const auto may = exchange::checkAcceptance(sheet, now.date); !may)
        throw Refused{o.file + ", " + may.error().input + ": " + may.error().message};
    if (protocol::loosens(effects) && !o.loosen)
        throw Refused{o.file +
                      ": allows more than the sheet in use (see caresheet show); if the prescriber wants that, "
                      "add --loosen"};
    std::vector<Fact> facts;
    for (const Payload& payload : toRecord)
        facts.push_back({"", person, now, nowMs(), "", payload});
    const auto id = recordAll(o.store, std::move(facts)).front();
    std::size_t changes = 0;
    for (const auto& effect : effects)
        changes += effect.changes.size();
    Answer answer{fmt::format("accepted for {}: recorded as {}\n", person, id), {{"id", id}, {"changes", changes}}};
    tellCourses(courses, answer);
    return answer;
}

void addFields(CLI::App& sub, Options& o)
{
    sub.add_option("--who", o.who, "prescriber or nurse")->required();
    sub.add_option("--given", o.given, "day, YYYY-MM-DD")->required();
    sub.add_option("--sites", o.sites, anyOf<Site>())->delimiter(',')->required();
    sub.add_option("--plan", o.plan, anyOf<CourseTemplate>());
    sub.add_option("--days", o.days, "prescribed days, from 1")->delimiter(',');
    sub.add_option("--waveform", o.waveform, "direct or pulsed");
    sub.add_option("--direct-limit", o.direct, "mA; can only lower the trade's");
    sub.add_option("--pulsed-limit", o.pulsed, "mA; can only lower the trade's");
    sub.add_option("--raise", o.raise, "seconds for raising, 20 to 180");
    sub.add_option("--lower", o.lower, "seconds for lowering");
    sub.add_option("--swapping", o.swapping, "seconds for swapping polarity");
    sub.add_option("--review", o.review, "day of the next review");
    sub.add_option("--notes", o.notes, "a few lines");
    sub.add_option("--pad", o.pad, "area of one armpit pad, cm²");
    sub.add_option("--at-no-response", o.atNoResponse, "what to do if the course brings no better score");
    sub.add_option("--contact", o.contact, "whom to call, with a number");
    sub.add_option("--level", o.level, "mA agreed to begin with at home, in the sheet's waveform");
    sub.add_option("--age", o.age, "adult or child (adult)");
    sub.add_option("--out", o.out, "the file to make")->required();
    sub.add_flag("--force", o.force, "replace what is there");
}

const Verb verb("caresheet", "what a prescriber sets: make, check, show or accept a sheet", [](CLI::App& sub) {
    auto o = std::make_shared<Options>();
    sub.require_subcommand(1);
    addFields(*sub.add_subcommand("new", "fill in a sheet"), *o);
    CLI::App* checking = sub.add_subcommand("check", "whether a sheet may be used");
    CLI::App* showing = sub.add_subcommand("show", "a sheet in full, and what it changes in a store");
    CLI::App* accepting = sub.add_subcommand("accept", "record a sheet as the one that holds");
    for (CLI::App* one : {checking, showing, accepting})
        one->add_option("FILE", o->file, "the sheet")->required();
    for (CLI::App* one : {checking, showing})
        one->add_option("--age", o->age, "adult or child (adult), where no store says so");
    showing->add_option("--store", o->store, "the store of the person it is for");
    accepting->add_option("--store", o->store, "the store of the person it is for")->required();
    for (CLI::App* one : {showing, accepting})
        one->add_option("--person", o->person, "whose record, where the store holds several");
    accepting->add_flag("--loosen", o->loosen, "accept a sheet that allows more than the one in use");
    showing->add_option("--qr", o->qr, "also draw it as a QR code into this SVG file");
    showing->add_flag("--force", o->force, "replace what is there");
    return [o, &sub, checking, showing, accepting] {
        return sub.got_subcommand(checking)    ? check(*o)
               : sub.got_subcommand(showing)   ? show(*o)
               : sub.got_subcommand(accepting) ? accept(*o)
                                               : make(*o);
    };
});

} // namespace

} // namespace firstdew::cli
