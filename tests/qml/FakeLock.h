#pragma once

#include "ports/OwnerCheck.h"

#include <string>
#include <utility>

namespace firstdew::tests {

/// A device with a lock that knows one password, asked through the app or in a dialog of its own.
struct FakeLock final : ports::OwnerCheck {
    bool there = true;
    bool through = true; ///< the app asks
    Verdict otherwise = Verdict::Refused;
    int asked = 0;
    Asking open;

    [[nodiscard]] bool available() const override { return there; }
    void ask(const std::string&, Asking asking) override
    {
        ++asked;
        open = std::move(asking);
        if (through)
            open.prompt("Password: ", true);
    }
    void reply(std::string secret) override
    {
        if (secret != "dew at six" && open.tell)
            open.tell("Caps Lock may be on");
        answer(secret == "dew at six" ? Verdict::Confirmed : otherwise);
    }
    void drop() override { open = {}; }
    void answer(Verdict verdict)
    {
        if (const auto done = std::exchange(open, {}).done)
            done(verdict);
    }
};

} // namespace firstdew::tests
