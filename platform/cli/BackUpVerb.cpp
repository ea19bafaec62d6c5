#include "Files.h"

#include "journal/BackUp.h"
#include "journal/OwnFile.h"

#include <fmt/format.h>
#include <memory>

namespace firstdew::cli {

namespace {

struct Options {
    std::string store, file, passphraseFile;
    bool force = false;
};

std::vector<facts::Fact> open(const Options& o)
{
    const std::string passphrase = passphraseFrom(o.passphraseFile);
    const std::string sealed = readWhole(o.file);
    const QuietLibrary quiet;
    return orRefuse(journal::openBackUp(o.file, sealed, passphrase));
}

Answer backUp(const Options& o)
{
    checkOut(o.file, o.store, o.force);
    if (const auto word = journal::identityOf(o.passphraseFile); word && journal::identityOf(o.file) == word)
        throw Refused{"--out: " + o.file + " holds the passphrase; choose another name"};
    const std::string passphrase = passphraseFrom(o.passphraseFile);
    const auto store = orRefuse(journal::Journal::openToRead(o.store));
    const auto facts = orRefuse(store.readAll()).size();
    writeWhole(o.file, orRefuse(journal::backUp(store, passphrase)), o.force);
    return {
        fmt::format("{} facts kept in {}; `gpg -d` opens it too. Without the passphrase nobody can\n", facts, o.file),
        {{"ok", true}, {"facts", facts}, {"out", o.file}}};
}

Answer restore(const Options& o)
{
    const auto restored = orRefuse(journal::restore(o.store, open(o)));
    Answer answer{fmt::format("{} facts restored\n", restored.facts), {{"ok", true}, {"facts", restored.facts}}};
    if (!restored.kept.empty()) {
        answer.json["kept"] = restored.kept.string();
        answer.text += fmt::format("what was there before is kept in {}\n", restored.kept.string());
    }
    return answer;
}

const Verb backUpVerb("backup", "write the whole record to one encrypted file", [](CLI::App& sub) {
    auto o = std::make_shared<Options>();
    sub.add_option("--store", o->store, "the person's store")->required();
    sub.add_option("--out", o->file, "the file to make")->required();
    sub.add_option("--passphrase-file", o->passphraseFile, "a file whose first line is the passphrase")->required();
    sub.add_flag("--force", o->force, "replace what is there");
    return [o] { return backUp(*o); };
});

const Verb restoreVerb(
    "restore", "put the record of a back-up in place of the present one, which is kept beside it", [](CLI::App& sub) {
        auto o = std::make_shared<Options>();
        sub.add_option("--store", o->store, "the person's store")->required();
        sub.add_option("--in", o->file, "the back-up")->required();
        sub.add_option("--passphrase-file", o->passphraseFile, "a file whose first line is the passphrase")->required();
        return [o] { return restore(*o); };
    });

} // namespace

} // namespace firstdew::cli
