#pragma once

#include "facts/Result.h"

#include <functional>
#include <jni.h>
#include <nlohmann/json.hpp>
#include <string>

namespace firstdew::androidside {

/// Calls org.firstdew.Bridge: a verb and a JSON document in, a JSON document out.
class JavaSide {
public:
    /// `context` is the app's activity or application. This object holds its own reference to it.
    JavaSide(JavaVM* machine, jobject context);
    ~JavaSide();
    JavaSide(const JavaSide&) = delete;
    JavaSide& operator=(const JavaSide&) = delete;

    /// Returns the answer. Errors: "no-java" if Java cannot be reached, "java" with the exception's text.
    [[nodiscard]] facts::Result<nlohmann::json> ask(const std::string& verb, const nlohmann::json& document) const;

    /// What a person did outside the app while it runs: "stop" on the notice of the session, "answered" on a notice or
    /// the widget. Called on Java's thread. One listener for the process, since Java knows only one app; an empty one
    /// ends it.
    void listen(std::function<void(const std::string& what)> listener) const;

private:
    [[nodiscard]] JNIEnv* environment() const;
    [[nodiscard]] facts::Error thrown(JNIEnv* env, const std::string& verb) const;
    void findBridge(JNIEnv* env);

    JavaVM* m_machine;
    jobject m_context = nullptr;
    jclass m_bridge = nullptr;
    jmethodID m_ask = nullptr;
};

} // namespace firstdew::androidside
