#pragma once

#include <string>
#include <utility>
#include <variant>

namespace firstdew::facts {

/// What went wrong, for a person or a log: the input at fault, its fault, and the remedy.
/// `message` is plain English; screens translate by `code`.
struct Error {
    std::string code;    ///< stable token, e.g. "reading-out-of-range"
    std::string input;   ///< the field, file or line at fault
    std::string message; ///< one sentence: what is wrong and what to do
};

/// A value or an Error. Calls that can fail return this, because core lets no exception out.
template <class T>
class [[nodiscard]] Result {
public:
    Result(T value) : m_value(std::in_place_index<0>, std::move(value)) {}
    Result(Error error) : m_value(std::in_place_index<1>, std::move(error)) {}

    [[nodiscard]] bool ok() const { return m_value.index() == 0; }
    explicit operator bool() const { return ok(); }
    [[nodiscard]] const T& value() const { return std::get<0>(m_value); }
    [[nodiscard]] T& value() { return std::get<0>(m_value); }
    [[nodiscard]] const T& operator*() const { return value(); }
    [[nodiscard]] const T* operator->() const { return &value(); }
    [[nodiscard]] const Error& error() const { return std::get<1>(m_value); }

private:
    std::variant<T, Error> m_value;
};

struct Done {};

} // namespace firstdew::facts
