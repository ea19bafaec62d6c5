#include "linux/PamOwnerCheck.h"

#include <array>
#include <condition_variable>
#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <mutex>
#include <optional>
#include <pwd.h>
#include <security/pam_appl.h>
#include <thread>
#include <unistd.h>
#include <utility>
#include <vector>

namespace firstdew::linuxside {

namespace {

using Verdict = ports::OwnerCheck::Verdict;

/// Also what lies behind the end, where a longer text was.
void wipe(std::string& secret)
{
    secret.resize(secret.capacity());
    ::explicit_bzero(secret.data(), secret.size());
    secret.clear();
}

/// The name of the account that runs this program, and of no other.
std::optional<std::string> ownName()
{
    std::array<char, 4096> room{};
    passwd entry{};
    passwd* found = nullptr;
    if (::getpwuid_r(::getuid(), &entry, room.data(), room.size(), &found) != 0 || found == nullptr)
        return std::nullopt;
    return found->pw_name;
}

Verdict verdictOf(int code)
{
    switch (code) {
    case PAM_SUCCESS: return Verdict::Confirmed;
    case PAM_AUTH_ERR:
    case PAM_PERM_DENIED:
    case PAM_MAXTRIES:
    case PAM_CRED_INSUFFICIENT: return Verdict::Refused;
    case PAM_CONV_ERR: return Verdict::Dropped;
    default: return Verdict::Unable;
    }
}

} // namespace

/// One conversation. Its thread may outlive the object that began it, as long as a module blocks.
struct PamOwnerCheck::Talk : std::enable_shared_from_this<Talk> {
    std::mutex mutex;
    std::condition_variable answered;
    QObject* listener = nullptr; ///< nullptr: nobody listens any more
    Asking asking;               ///< used in the listener's thread alone
    std::optional<std::string> secret;

    /// Has the listener do that, in its own thread, unless it has gone by then.
    void tell(std::function<void(Asking&)> say)
    {
        const std::lock_guard held(mutex);
        if (listener == nullptr)
            return;
        QMetaObject::invokeMethod(
            listener,
            [self = shared_from_this(), say = std::move(say)] {
                {
                    const std::lock_guard still(self->mutex);
                    if (self->listener == nullptr)
                        return;
                }
                say(self->asking);
            },
            Qt::QueuedConnection);
    }

    /// Nobody listens from now on, and whoever waits for an answer gets none.
    void leave()
    {
        const std::lock_guard held(mutex);
        listener = nullptr;
        if (secret)
            wipe(*secret);
        secret.reset();
        answered.notify_all();
    }

    /// The answer as PAM wants it, to be freed by the module that asked. Nullptr where nobody answers any more.
    char* awaitAnswer(const std::string& words, bool hidden)
    {
        tell([words, hidden](Asking& a) { a.prompt(words, hidden); });
        std::unique_lock held(mutex);
        answered.wait(held, [this] { return secret || listener == nullptr; });
        if (!secret)
            return nullptr;
        char* given = ::strdup(secret->c_str());
        wipe(*secret);
        secret.reset();
        return given;
    }

    static int converse(int count, const pam_message** messages, pam_response** responses, void* talk);
    int authenticate(const std::string& service, const std::string& folder, const std::string& user);
};

int PamOwnerCheck::Talk::converse(int count, const pam_message** messages, pam_response** responses, void* talk)
{
    if (count <= 0 || count > PAM_MAX_NUM_MSG)
        return PAM_CONV_ERR;
    auto* self = static_cast<Talk*>(talk);
    const auto number = static_cast<std::size_t>(count);
    auto* out = static_cast<pam_response*>(std::calloc(number, sizeof(pam_response)));
    if (out == nullptr)
        return PAM_BUF_ERR;
    for (std::size_t i = 0; i < number; ++i) {
        const std::string words = messages[i]->msg != nullptr ? messages[i]->msg : "";
        const int style = messages[i]->msg_style;
        if (style == PAM_PROMPT_ECHO_OFF || style == PAM_PROMPT_ECHO_ON) {
            out[i].resp = self->awaitAnswer(words, style == PAM_PROMPT_ECHO_OFF);
            if (out[i].resp != nullptr)
                continue;
            for (std::size_t j = 0; j < i; ++j)
                if (out[j].resp != nullptr) {
                    ::explicit_bzero(out[j].resp, std::strlen(out[j].resp));
                    std::free(out[j].resp);
                }
            std::free(out);
            return PAM_CONV_ERR;
        }
        self->tell([words](Asking& a) { a.tell(words); });
    }
    *responses = out;
    return PAM_SUCCESS;
}

/// PAM's own code.
int PamOwnerCheck::Talk::authenticate(const std::string& service, const std::string& folder, const std::string& user)
{
    const pam_conv conversation{&Talk::converse, this};
    pam_handle_t* handle = nullptr;
    int code = folder.empty()
                   ? ::pam_start(service.c_str(), user.c_str(), &conversation, &handle)
                   : ::pam_start_confdir(service.c_str(), user.c_str(), &conversation, folder.c_str(), &handle);
    if (code != PAM_SUCCESS)
        return code;
    code = ::pam_authenticate(handle, PAM_DISALLOW_NULL_AUTHTOK);
    if (code == PAM_SUCCESS) { // a module may have let in somebody else
        const void* who = nullptr;
        if (::pam_get_item(handle, PAM_USER, &who) != PAM_SUCCESS || who == nullptr ||
            user != static_cast<const char*>(who))
            code = PAM_PERM_DENIED;
    }
    ::pam_end(handle, code);
    return code;
}

PamOwnerCheck::PamOwnerCheck(std::string service, std::string folder)
    : m_service(std::move(service)), m_folder(std::move(folder))
{
}

PamOwnerCheck::~PamOwnerCheck() { drop(); }

bool PamOwnerCheck::available() const
{
    std::error_code none;
    return std::filesystem::is_regular_file(
        std::filesystem::path(m_folder.empty() ? std::string("/etc/pam.d") : m_folder) / m_service, none);
}

void PamOwnerCheck::ask(const std::string&, Asking asking)
{
    drop();
    m_talk = std::make_shared<Talk>();
    m_talk->listener = this;
    m_talk->asking = std::move(asking);
    const auto user = ownName();
    if (!user || !available()) {
        m_talk->tell([](Asking& a) { a.done(Verdict::Unable); });
        return;
    }
    std::thread([talk = m_talk, service = m_service, folder = m_folder, user = *user] {
        const Verdict verdict = verdictOf(talk->authenticate(service, folder, user));
        talk->tell([verdict](Asking& a) { a.done(verdict); });
    }).detach();
}

void PamOwnerCheck::reply(std::string secret)
{
    if (m_talk) {
        const std::lock_guard held(m_talk->mutex);
        if (m_talk->secret)
            wipe(*m_talk->secret);
        m_talk->secret = secret;
        m_talk->answered.notify_all();
    }
    wipe(secret);
}

void PamOwnerCheck::drop()
{
    if (const auto talk = std::exchange(m_talk, nullptr))
        talk->leave();
}

} // namespace firstdew::linuxside
