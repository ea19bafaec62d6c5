#include "summary/Contents.h"
