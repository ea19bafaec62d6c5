#include "Router.h"

namespace firstdew::controls {

void Router::startBath(const QString& site)
{
    m_bathSite = site;
    emit bathSiteChanged();
    emit place(QStringLiteral("bath"));
}

} // namespace firstdew::controls
