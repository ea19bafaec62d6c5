package org.firstdew;

import android.content.Context;

/** Our own resources by name. The list of their numbers is made by the packaging, which comes after the tests. */
final class Own {
    private Own() {}

    /** 0 if there is none of that name. */
    static int id(Context context, String kind, String name) {
        return context.getResources().getIdentifier(name, kind, context.getPackageName());
    }
}
