#include "android/JavaSide.h"

#include <iostream>
#include <mutex>
#include <utility>

namespace firstdew::androidside {

using facts::Error;
using facts::Result;

namespace {

constexpr const char* kBridge = "org.firstdew.Bridge";

/// Frees the local references of the scope. Java does not free them, because a C++ thread never returns to Java.
class Frame {
public:
    explicit Frame(JNIEnv* env) : m_env(env), m_open(env->PushLocalFrame(16) == 0) {}
    ~Frame()
    {
        if (m_open)
            m_env->PopLocalFrame(nullptr);
    }
    Frame(const Frame&) = delete;
    Frame& operator=(const Frame&) = delete;

private:
    JNIEnv* m_env;
    bool m_open;
};

std::string text(JNIEnv* env, jstring from)
{
    if (from == nullptr)
        return {};
    const char* bytes = env->GetStringUTFChars(from, nullptr);
    if (bytes == nullptr)
        return {};
    std::string out(bytes);
    env->ReleaseStringUTFChars(from, bytes);
    return out;
}

/// Java calls a plain function, so what it calls is kept here.
struct Listener {
    std::mutex mutex;
    std::function<void(const std::string&)> tell;
};

Listener& listener()
{
    static Listener one;
    return one;
}

void JNICALL told(JNIEnv* env, jclass, jstring what)
{
    std::function<void(const std::string&)> tell;
    {
        const std::scoped_lock lock(listener().mutex);
        tell = listener().tell;
    }
    if (tell)
        tell(text(env, what));
}

} // namespace

JavaSide::JavaSide(JavaVM* machine, jobject context) : m_machine(machine)
{
    JNIEnv* env = environment();
    if (env == nullptr || context == nullptr)
        return;
    const Frame frame(env);
    m_context = env->NewGlobalRef(context);
    findBridge(env);
    if (env->ExceptionCheck() != JNI_FALSE)
        env->ExceptionClear();
}

JavaSide::~JavaSide()
{
    listen({});
    JNIEnv* env = environment();
    if (env == nullptr)
        return;
    if (m_bridge != nullptr)
        env->DeleteGlobalRef(m_bridge);
    if (m_context != nullptr)
        env->DeleteGlobalRef(m_context);
}

void JavaSide::listen(std::function<void(const std::string&)> tell) const
{
    const bool wanted = static_cast<bool>(tell);
    {
        const std::scoped_lock lock(listener().mutex);
        listener().tell = std::move(tell);
    }
    JNIEnv* env = environment();
    if (!wanted || env == nullptr || m_bridge == nullptr)
        return;
    // The desktop's header takes the names as char*, Android's as const char*.
    static char name[] = "told";
    static char signature[] = "(Ljava/lang/String;)V";
    const JNINativeMethod method{name, signature, reinterpret_cast<void*>(&told)};
    if (env->RegisterNatives(m_bridge, &method, 1) != JNI_OK)
        std::clog << "firstdew: Stop on the notice of a session cannot reach the app\n";
    if (env->ExceptionCheck() != JNI_FALSE)
        env->ExceptionClear();
}

JNIEnv* JavaSide::environment() const
{
    void* env = nullptr;
    if (m_machine == nullptr)
        return nullptr;
    if (m_machine->GetEnv(&env, JNI_VERSION_1_6) == JNI_OK)
        return static_cast<JNIEnv*>(env);
        // Android declares this parameter as JNIEnv**, the desktop's header as void**.
#ifdef __ANDROID__
    JNIEnv* attached = nullptr;
    return m_machine->AttachCurrentThread(&attached, nullptr) == JNI_OK ? attached : nullptr;
#else
    return m_machine->AttachCurrentThread(&env, nullptr) == JNI_OK ? static_cast<JNIEnv*>(env) : nullptr;
#endif
}

/// Uses the app's class loader, because FindClass on a C++ thread finds only system classes.
void JavaSide::findBridge(JNIEnv* env)
{
    const jmethodID getClassLoader =
        env->GetMethodID(env->GetObjectClass(m_context), "getClassLoader", "()Ljava/lang/ClassLoader;");
    if (getClassLoader == nullptr)
        return;
    const jobject loader = env->CallObjectMethod(m_context, getClassLoader);
    if (env->ExceptionCheck() != JNI_FALSE || loader == nullptr)
        return;
    const jmethodID loadClass =
        env->GetMethodID(env->GetObjectClass(loader), "loadClass", "(Ljava/lang/String;)Ljava/lang/Class;");
    const jstring name = env->NewStringUTF(kBridge);
    if (loadClass == nullptr || name == nullptr)
        return;
    const jobject bridge = env->CallObjectMethod(loader, loadClass, name);
    if (env->ExceptionCheck() != JNI_FALSE || bridge == nullptr)
        return;
    m_bridge = static_cast<jclass>(env->NewGlobalRef(bridge));
    m_ask = env->GetStaticMethodID(m_bridge, "ask",
                                   "(Landroid/content/Context;Ljava/lang/String;Ljava/lang/String;)Ljava/lang/String;");
}

Error JavaSide::thrown(JNIEnv* env, const std::string& verb) const
{
    const jthrowable what = env->ExceptionOccurred();
    // JNI allows no other call while an exception is pending.
    env->ExceptionClear();
    std::string said = "the system gave no answer";
    const jmethodID toString =
        what == nullptr ? nullptr : env->GetMethodID(env->GetObjectClass(what), "toString", "()Ljava/lang/String;");
    if (toString != nullptr)
        said = text(env, static_cast<jstring>(env->CallObjectMethod(what, toString)));
    if (env->ExceptionCheck() != JNI_FALSE)
        env->ExceptionClear();
    return {"java", verb, said};
}

Result<nlohmann::json> JavaSide::ask(const std::string& verb, const nlohmann::json& document) const
{
    JNIEnv* env = environment();
    if (env == nullptr || m_ask == nullptr)
        return Error{"no-java", verb, "the Java side is not there"};
    const Frame frame(env);
    // ASCII only, because JNI strings use modified UTF-8.
    const std::string ascii = document.dump(-1, ' ', true, nlohmann::json::error_handler_t::replace);
    const jstring question = env->NewStringUTF(verb.c_str());
    const jstring details = env->NewStringUTF(ascii.c_str());
    const auto answer =
        question == nullptr || details == nullptr
            ? nullptr
            : static_cast<jstring>(env->CallStaticObjectMethod(m_bridge, m_ask, m_context, question, details));
    if (env->ExceptionCheck() != JNI_FALSE || answer == nullptr)
        return thrown(env, verb);
    auto told = nlohmann::json::parse(text(env, answer), nullptr, false);
    if (told.is_discarded() || !told.is_object())
        return Error{"java", verb, "the Java side answered with what is no JSON object"};
    return told;
}

} // namespace firstdew::androidside
