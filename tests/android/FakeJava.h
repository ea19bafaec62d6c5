#pragma once

#include <cstdarg>
#include <cstdint>
#include <functional>
#include <jni.h>
#include <map>
#include <set>
#include <stdexcept>
#include <string>
#include <type_traits>
#include <vector>

namespace firstdew::tests {

/// A Java machine of tables and maps: enough of JNI to find the app's class by its loader and to call it. It is strict
/// where a real one is: a call while an exception is pending, a reference used after it was freed, a string released
/// twice or never are all noted in `faults`.
class FakeJava {
public:
    struct Thrown : std::runtime_error {
        using std::runtime_error::runtime_error;
    };
    /// What stands for Bridge.ask; throws Thrown to throw in Java.
    std::function<std::string(const std::string& verb, const std::string& document)> bridge;
    bool bridgeIsThere = true;
    bool attached = true;
    std::vector<std::string> faults;
    /// What Java's native method calls, as a thread of Java would; false where the app has none there.
    bool tell(const std::string& what)
    {
        if (m_told == nullptr)
            return false;
        m_frames.emplace_back(); // Java frees what it made for the call
        m_told(&m_env, nullptr, static_cast<jstring>(make("string", what)));
        m_frames.pop_back();
        return true;
    }

    FakeJava();
    ~FakeJava() { current() = nullptr; }
    FakeJava(const FakeJava&) = delete;
    FakeJava& operator=(const FakeJava&) = delete;

    JavaVM* machine() { return &m_machine; }
    jobject context() { return m_context; }
    /// References that are still held, besides the context that the caller holds.
    std::size_t globals() const { return m_globals.size(); }
    std::size_t locals() const { return m_frames.front().size(); }
    std::size_t strings() const { return m_lent.size(); }

private:
    struct Object {
        std::string kind;
        std::string text;
    };
    enum Method : int { GetClassLoader = 1, LoadClass, ToString, Ask };

    static FakeJava*& current()
    {
        static FakeJava* one = nullptr;
        return one;
    }

    jobject make(std::string kind, std::string text = {})
    {
        m_objects[++m_last] = {std::move(kind), std::move(text)};
        const auto handle = reinterpret_cast<jobject>(m_last);
        m_frames.back().insert(handle);
        return handle;
    }
    const Object& at(jobject handle)
    {
        const auto id = reinterpret_cast<std::uintptr_t>(handle);
        const bool held = handle == m_context || m_globals.count(handle) != 0 || heldByFrame(handle);
        if (!held)
            faults.push_back("a reference is used that is not held");
        return m_objects[id];
    }
    bool heldByFrame(jobject handle) const
    {
        for (const auto& frame : m_frames)
            if (frame.count(handle) != 0)
                return true;
        return false;
    }
    void raise(const std::string& text) { m_pending = make("throwable", text); }
    void mustBeCalm(const char* call)
    {
        if (m_pending != nullptr)
            faults.push_back(std::string(call) + " while an exception is pending");
    }
    static jmethodID id(Method m) { return reinterpret_cast<jmethodID>(static_cast<std::uintptr_t>(m)); }

    jmethodID method(jclass owner, const std::string& name, const std::string& signature);
    jobject call(jobject object, jmethodID method, va_list arguments);
    jobject callStatic(jclass owner, jmethodID method, va_list arguments);
    jint registerNatives(jclass owner, const JNINativeMethod* methods, jint count);
    void fillTable();

    // The desktop's header and Android's own call these types differently.
    std::remove_const_t<std::remove_pointer_t<decltype(JNIEnv::functions)>> m_table{};
    std::remove_const_t<std::remove_pointer_t<decltype(JavaVM::functions)>> m_invoke{};
    JNIEnv m_env{};
    JavaVM m_machine{};
    std::map<std::uintptr_t, Object> m_objects;
    std::uintptr_t m_last = 100;
    jobject m_context = nullptr;
    jobject m_pending = nullptr;
    std::set<jobject> m_globals;
    std::vector<std::set<jobject>> m_frames{1};
    std::set<const char*> m_lent;
    void(JNICALL* m_told)(JNIEnv*, jclass, jstring) = nullptr;
};

inline jmethodID FakeJava::method(jclass owner, const std::string& name, const std::string& signature)
{
    mustBeCalm("GetMethodID");
    const std::string kind = at(owner).text;
    if (kind == "context" && name == "getClassLoader" && signature == "()Ljava/lang/ClassLoader;")
        return id(GetClassLoader);
    if (kind == "loader" && name == "loadClass" && signature == "(Ljava/lang/String;)Ljava/lang/Class;")
        return id(LoadClass);
    if (kind == "throwable" && name == "toString" && signature == "()Ljava/lang/String;")
        return id(ToString);
    if (kind == "org.firstdew.Bridge" && name == "ask" &&
        signature == "(Landroid/content/Context;Ljava/lang/String;Ljava/lang/String;)Ljava/lang/String;")
        return id(Ask);
    raise("java.lang.NoSuchMethodError: " + name);
    return nullptr;
}

inline jobject FakeJava::call(jobject object, jmethodID called, va_list arguments)
{
    mustBeCalm("CallObjectMethod");
    const std::string kind = at(object).kind;
    if (called == id(GetClassLoader) && kind == "context")
        return make("loader");
    if (called == id(ToString) && kind == "throwable")
        return make("string", at(object).text);
    if (called == id(LoadClass) && kind == "loader") {
        const std::string name = at(va_arg(arguments, jobject)).text;
        if (bridgeIsThere && name == "org.firstdew.Bridge")
            return make("class", name);
        raise("java.lang.ClassNotFoundException: " + name);
        return nullptr;
    }
    faults.push_back("a method is called on what has none such");
    return nullptr;
}

inline jobject FakeJava::callStatic(jclass owner, jmethodID called, va_list arguments)
{
    mustBeCalm("CallStaticObjectMethod");
    if (at(owner).text != "org.firstdew.Bridge" || called != id(Ask))
        faults.push_back("a static method is called on the wrong class");
    if (at(va_arg(arguments, jobject)).kind != "context")
        faults.push_back("the first argument is no context");
    const std::string verb = at(va_arg(arguments, jobject)).text;
    const std::string document = at(va_arg(arguments, jobject)).text;
    try {
        return make("string", bridge(verb, document));
    } catch (const Thrown& e) {
        raise(e.what());
        return nullptr;
    }
}

inline FakeJava::FakeJava()
{
    current() = this;
    fillTable();
    m_env.functions = &m_table;
    m_machine.functions = &m_invoke;
    m_context = make("context");
    m_frames.front().clear();
}

inline jint FakeJava::registerNatives(jclass owner, const JNINativeMethod* methods, jint count)
{
    mustBeCalm("RegisterNatives");
    if (at(owner).text != "org.firstdew.Bridge" || count != 1 || std::string(methods->name) != "told" ||
        std::string(methods->signature) != "(Ljava/lang/String;)V") {
        raise("java.lang.NoSuchMethodError");
        return JNI_ERR;
    }
    m_told = reinterpret_cast<void(JNICALL*)(JNIEnv*, jclass, jstring)>(methods->fnPtr);
    return JNI_OK;
}

inline void FakeJava::fillTable()
{
    m_invoke.GetEnv = [](JavaVM*, void** env, jint) -> jint {
        *env = current()->attached ? &current()->m_env : nullptr;
        return current()->attached ? JNI_OK : JNI_EDETACHED;
    };
    // JNIEnv** for Android, void** for a desktop.
    m_invoke.AttachCurrentThread = [](JavaVM*, auto** env, void*) -> jint {
        current()->attached = true;
        *env = &current()->m_env;
        return JNI_OK;
    };
    m_table.PushLocalFrame = [](JNIEnv*, jint) -> jint {
        current()->m_frames.emplace_back();
        return 0;
    };
    m_table.PopLocalFrame = [](JNIEnv*, jobject) -> jobject {
        current()->m_frames.pop_back();
        return nullptr;
    };
    m_table.NewGlobalRef = [](JNIEnv*, jobject object) -> jobject {
        auto& j = *current();
        const Object copy = j.at(object);
        j.m_objects[++j.m_last] = copy;
        const auto handle = reinterpret_cast<jobject>(j.m_last);
        j.m_globals.insert(handle);
        return handle;
    };
    m_table.DeleteGlobalRef = [](JNIEnv*, jobject object) {
        if (current()->m_globals.erase(object) == 0)
            current()->faults.push_back("a global reference is freed that is not held");
    };
    m_table.GetObjectClass = [](JNIEnv*, jobject object) -> jclass {
        const std::string kind = current()->at(object).kind;
        return static_cast<jclass>(current()->make("class", kind));
    };
    m_table.GetMethodID = [](JNIEnv*, jclass owner, const char* name, const char* signature) {
        return current()->method(owner, name, signature);
    };
    m_table.GetStaticMethodID = m_table.GetMethodID;
    m_table.CallObjectMethodV = [](JNIEnv*, jobject object, jmethodID called, va_list arguments) {
        return current()->call(object, called, arguments);
    };
    m_table.CallStaticObjectMethodV = [](JNIEnv*, jclass owner, jmethodID called, va_list arguments) {
        return current()->callStatic(owner, called, arguments);
    };
    m_table.NewStringUTF = [](JNIEnv*, const char* bytes) -> jstring {
        current()->mustBeCalm("NewStringUTF");
        return static_cast<jstring>(current()->make("string", bytes));
    };
    m_table.GetStringUTFChars = [](JNIEnv*, jstring string, jboolean*) -> const char* {
        const char* bytes = current()->at(string).text.c_str();
        current()->m_lent.insert(bytes);
        return bytes;
    };
    m_table.ReleaseStringUTFChars = [](JNIEnv*, jstring, const char* bytes) {
        if (current()->m_lent.erase(bytes) == 0)
            current()->faults.push_back("a string is released that was not lent");
    };
    m_table.RegisterNatives = [](JNIEnv*, jclass owner, const JNINativeMethod* methods, jint count) -> jint {
        return current()->registerNatives(owner, methods, count);
    };
    m_table.ExceptionCheck = [](JNIEnv*) -> jboolean { return current()->m_pending != nullptr ? JNI_TRUE : JNI_FALSE; };
    m_table.ExceptionOccurred = [](JNIEnv*) -> jthrowable { return static_cast<jthrowable>(current()->m_pending); };
    m_table.ExceptionClear = [](JNIEnv*) { current()->m_pending = nullptr; };
}

} // namespace firstdew::tests
