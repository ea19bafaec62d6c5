#!/usr/bin/python3
"""The verbs that know the trade and need no store: the first course, the dose of a session, weighing.

Usage: cli_trade_test.py PATH-OF-FIRSTDEW-CLI
"""
import unittest

from cli import CliTest


class Course(CliTest):
    EXAMPLE = ('course', '--template', 'seven', '--start', '2026-03-02', '--missed', '2026-03-05',
               '--free', 'mon,tue,thu,fri', '--away', '2026-03-10..2026-03-12', '--today', '2026-03-06')

    def dates(self, *args):
        return [s['date'] for s in self.ok('course', *args)['sessions']]

    def test_a_missed_session_moves_and_the_rest_is_planned_around_free_days_and_days_away(self):
        answer = self.ok(*self.EXAMPLE)
        self.assertEqual([(s['number'], s['template_day'], s['date'], s['state'], s['why']) for s in answer['sessions']], [
            (1, 1, '2026-03-02', 'done', 'none'), (2, 2, '2026-03-03', 'done', 'none'),
            (3, 4, '2026-03-06', 'planned', 'missed'), (4, 7, '2026-03-09', 'planned', 'weekday-not-free'),
            (5, 10, '2026-03-13', 'planned', 'away'), (6, 15, '2026-03-16', 'planned', 'none'),
            (7, 22, '2026-03-23', 'planned', 'none')])
        self.assertEqual((answer['window_end'], answer['fits'], answer['shift_cost']), ('2026-03-29', True, 6))
        self.assertTrue(answer['done_supposed'])

    def test_the_text_says_the_plan_and_why(self):
        text = self.run_cli(*self.EXAMPLE).stdout
        for part in ('2026-03-06 Friday', '1 day later: missed on Thursday 2026-03-05',
                     'Sunday 2026-03-08 is not one of the free weekdays', 'away on Wednesday 2026-03-11',
                     'next session: Friday 2026-03-06, which is today', 'taken as done', 'ends on Sunday 2026-03-29'):
            self.assertIn(part, text)

    def test_with_nothing_but_a_start_the_template_stands_whatever_the_clock_says(self):
        for now_ms in (0, 1772712000000, 4000000000000):
            answer = self.ok('course', '--template', 'seven', '--start', '2026-03-02', now_ms=now_ms)
            self.assertEqual([s['date'][8:] for s in answer['sessions']], ['02', '03', '05', '08', '11', '16', '23'])
            self.assertEqual({s['state'] for s in answer['sessions']}, {'planned'})

    def test_the_other_templates_and_prescribed_days(self):
        self.assertEqual(len(self.dates('--template', 'mwf', '--start', '2026-03-02')), 12)
        self.assertEqual(self.dates('--template', 'daily', '--start', '2026-03-02')[-1], '2026-03-13')
        self.assertEqual(self.dates('--days', '1,3,8', '--start', '2026-03-02'),
                         ['2026-03-02', '2026-03-04', '2026-03-09'])

    def test_a_session_put_on_a_day_by_hand_stays_there(self):
        self.assertEqual(self.dates('--start', '2026-03-02', '--move', '3=2026-03-10')[1:5],
                         ['2026-03-03', '2026-03-10', '2026-03-11', '2026-03-12'])

    def test_where_the_window_cannot_be_kept_it_is_said_by_how_much(self):
        call = ('course', '--start', '2026-03-02', '--away', '2026-03-02..2026-03-27')
        answer = self.ok(*call)
        self.assertEqual((answer['fits'], answer['overrun_days']), (False, 5))
        self.assertIn('cannot be kept: the last session lies 5 days past it', self.run_cli(*call).stdout)

    def test_named_sessions_count_and_nothing_else_does(self):
        answer = self.ok('course', '--start', '2026-03-02', '--done', '2026-03-02', '--today', '2026-03-06')
        self.assertEqual([s['state'] for s in answer['sessions']], ['done'] + 6 * ['planned'])
        self.assertFalse(answer['done_supposed'])

    def test_a_day_that_has_its_session_takes_no_second(self):
        dates = self.dates('--start', '2026-03-02', '--done', '2026-03-02', '--today', '2026-03-02')
        self.assertEqual(dates[:2], ['2026-03-02', '2026-03-03'])
        self.refused(1, 'course', '--start', '2026-03-02', '--done', '2026-03-02', '--move', '2=2026-03-02',
                     '--today', '2026-03-02', saying='has its session')

    def test_bad_input(self):
        call = ('course', '--start', '2026-03-02')
        for code, more, saying in (
                (2, ('--template', 'eight'), 'seven, mwf, daily, prescribed'), (2, ('--free', 'mo'), 'mon, tue'),
                (2, ('--today', '2026-02-30'), 'no date'), (2, ('--away', '2026-03-10..'), 'no date'),
                (2, ('--template', 'mwf', '--days', '1,2'), '--days'), (2, ('--move', '3'), 'NUMBER='),
                (2, ('--days', 'x'), '--days'), (1, ('--days', '2,1'), 'ascending'),
                (1, ('--template', 'prescribed'), 'names no days'),
                (1, ('--away', '2026-03-12..2026-03-10'), 'turn them round'),
                (1, ('--away', '2026-03-02..2036-12-31'), 'free some weekdays'),
                (1, ('--done', '2026-03-01'), 'before day 1'),
                (1, ('--done', '2026-03-09', '--today', '2026-03-06'), 'after today'),
                (1, ('--missed', '2026-03-09', '--today', '2026-03-06'), 'name it as away'),
                (1, ('--done', '2026-03-05', '--missed', '2026-03-05'), 'only be one'),
                (1, ('--move', '8=2026-03-10'), 'session 8')):
            self.refused(code, *call, *more, saying=saying)
        self.refused(2, 'course', saying='--start')


if __name__ == '__main__':
    unittest.main()
