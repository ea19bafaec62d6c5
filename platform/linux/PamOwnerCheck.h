#pragma once

#include "ports/OwnerCheck.h"

#include <QObject>

#include <memory>

namespace firstdew::linuxside {

/// Asks for the password of the account that runs the app, or whatever else the system has set up for it, through PAM.
/// PAM may take seconds and modules may block, so it runs in a thread of its own. Passwords pass through this class and
/// are wiped; nothing of them is kept or logged.
class PamOwnerCheck final : public QObject, public ports::OwnerCheck {
    Q_OBJECT

public:
    /// `folder` has the file of the service, for tests; empty: where the system has them.
    explicit PamOwnerCheck(std::string service = "firstdew", std::string folder = {});
    ~PamOwnerCheck() override;

    /// Whether the package's PAM service is installed. Without it PAM would go by a default that is nobody's choice.
    [[nodiscard]] bool available() const override;
    void ask(const std::string& why, Asking asking) override;
    void reply(std::string secret) override;
    void drop() override;

private:
    struct Talk;
    std::string m_service;
    std::string m_folder;
    std::shared_ptr<Talk> m_talk; ///< the one that may still be heard
};

} // namespace firstdew::linuxside
