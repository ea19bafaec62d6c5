#include "journal/OpenPgp.h"
#include "late/Parts.h"

FIRSTDEW_PART(Seal, {firstdew::journal::seal, firstdew::journal::unseal});
