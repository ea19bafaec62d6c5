#pragma once

#include "facts/Result.h"

#include <jni.h>
#include <nlohmann/json.hpp>
#include <string>

namespace firstdew::androidside {

/// The door to the Java side: org.firstdew.Bridge, a verb and a JSON document each way.
class JavaSide {
public:
    /// `context` is the app's activity or application; it is kept by a reference of its own.
    JavaSide(JavaVM* machine, jobject context);
    ~JavaSide();
    JavaSide(const JavaSide&) = delete;
    JavaSide& operator=(const JavaSide&) = delete;

    /// What the Java side answers. Errors: "no-java" where it cannot be reached, "java" with what it threw.
    [[nodiscard]] facts::Result<nlohmann::json> ask(const std::string& verb, const nlohmann::json& document) const;

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
