#pragma once

#include <functional>

namespace firstdew::ports {

/// The camera, to read a code with. Nothing is kept of what it sees.
class CodeCamera {
public:
    /// Brightness 0 to 255, row by row, without gaps.
    struct Picture {
        const unsigned char* grey = nullptr;
        int width = 0;
        int height = 0;
    };

    virtual ~CodeCamera() = default;
    /// Whether the device has a camera.
    [[nodiscard]] virtual bool present() const = 0;
    /// Starts the camera, which asks for permission where the system wants that. `seen` gets each picture until stop(),
    /// on the thread that called start(); `failed` is called if there will be none.
    virtual void start(std::function<void(const Picture&)> seen, std::function<void()> failed) = 0;
    virtual void stop() = 0;
};

} // namespace firstdew::ports
