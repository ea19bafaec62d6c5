#pragma once

#include "protocol/Drawings.h"

#include <QString>

// What stands for a drawing: its file and, for whoever does not see it, its text.
namespace firstdew::words {

/// What the drawing shows, in a sentence or two.
[[nodiscard]] QString drawingText(protocol::Drawing drawing);
/// The picture in that theme, as a resource.
[[nodiscard]] QString drawingFile(protocol::Drawing drawing, bool dark);
/// Whether it may be turned over where people read from right to left: not where left and right, a dial, figures or
/// signs of polarity mean something.
[[nodiscard]] bool drawingMayTurn(protocol::Drawing drawing);

} // namespace firstdew::words
