#pragma once

#include "Enums.h"

#include <QString>

namespace firstdew::ui {

/// Whether it works at a site.
class SiteAnswer {
    Q_GADGET
    QML_VALUE_TYPE(siteAnswer)
    Q_PROPERTY(bool known MEMBER known FINAL)
    Q_PROPERTY(bool works MEMBER works FINAL)
    Q_PROPERTY(QString line MEMBER line FINAL)
    Q_PROPERTY(QString detail MEMBER detail FINAL)

public:
    bool known = false; ///< false where the site is not in use
    bool works = false; ///< wholly, not only in part
    QString line;       ///< the answer
    QString detail;     ///< the figures behind it, or what is missing
    bool operator==(const SiteAnswer&) const = default;
};

} // namespace firstdew::ui
