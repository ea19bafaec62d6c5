#pragma once
// Simulated people, for judging the rules.
