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
        self.assertEqual((answer['done_supposed'], answer['missed']), (True, ['2026-03-05']))

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

    def test_sessions_that_crowd_are_named_and_a_day_between_can_be_asked_for(self):
        call = ('course', '--start', '2026-03-02', '--done', '2026-03-02', '--done', '2026-03-03', '--today', '2026-03-24')
        answer = self.ok(*call)
        self.assertEqual(answer['pace'], 'keep-window')
        self.assertIn('5 sessions stand on consecutive days; with --pace day-between the last one is on Wednesday 2026-04-01, 3 days past the window',
                      answer['notes'])
        answer = self.ok(*call, '--pace', 'day-between')
        self.assertEqual([s['date'] for s in answer['sessions']][2:], ['2026-03-24', '2026-03-26', '2026-03-28', '2026-03-30', '2026-04-01'])
        self.assertEqual((answer['pace'], answer['fits'], answer['overrun_days']), ('day-between', False, 3))
        self.assertFalse(any('consecutive' in note for note in answer['notes']))
        self.refused(2, *call, '--pace', 'slow', saying='keep-window')

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


class Bath(CliTest):
    def bath(self, site, *more, waveform='direct', age='adult'):
        return self.ok('bath', '--site', site, '--waveform', waveform, '--age', age, *more)

    def test_phases_and_times_of_each_site(self):
        # Common practice, no source.
        for site, waveform, phases, minutes in (('hands', 'direct', 2, 20), ('feet', 'direct', 2, 30),
                                                ('hand-foot', 'direct', 4, 40), ('armpits', 'pulsed', 2, 20)):
            answer = self.bath(site, waveform=waveform)
            holds = [s for s in answer['steps'] if s['kind'] == 'hold']
            self.assertEqual((len(holds), answer['hold_seconds']), (phases, 60 * minutes))
            self.assertEqual([s['polarity'] for s in holds], [1, -1] * (phases // 2))
            self.assertEqual(answer['total_seconds'], sum(s['seconds'] for s in answer['steps']))

    def test_limits_by_age_and_waveform(self):
        # Common practice; direct also NHS hospital leaflet WPR26540; pulsed for children our own choice.
        for waveform, age, limit in (('direct', 'adult', 20), ('direct', 'child', 15), ('pulsed', 'adult', 30),
                                     ('pulsed', 'child', 20)):
            steps = self.bath('feet', waveform=waveform, age=age)['steps']
            self.assertEqual({s['limit_ma'] for s in steps}, {limit})

    def test_polarity_is_reversed_at_zero_between_lowering_and_raising(self):
        for polarity, prompt in (('leads', 'swap-leads'), ('switch', 'flip-switch')):
            steps = self.bath('feet', '--polarity', polarity)['steps']
            at = [s['kind'] for s in steps].index('swap')
            self.assertEqual([s['kind'] for s in steps[at - 1:at + 2]], ['lower', 'swap', 'raise'])
            self.assertEqual(steps[at]['prompt'], prompt)

    def test_with_the_hands_under_what_needs_dry_hands_waits_for_a_tap(self):
        steps = self.bath('hands', '--hands-under')['steps']
        self.assertEqual([s['kind'] for s in steps if not s['timed']],
                         ['check-list', 'switch-on', 'hands-out', 'swap', 'hands-out', 'finish'])
        self.assertEqual({s['kind']: s['seconds'] for s in steps if s['kind'] in ('announce', 'raise', 'lower')},
                         {'announce': 15, 'raise': 60, 'lower': 60})
        self.refused(1, 'bath', '--site', 'hands', '--waveform', 'direct', '--age', 'child', '--hands-under',
                     saying='choose a helper')

    def test_refused(self):
        call = ('bath', '--waveform', 'direct', '--age', 'adult', '--site')
        self.refused(1, *call, 'armpits', saying='pulsed current only')
        self.refused(1, *call, 'feet', '--hands-under', saying='--hands-under')
        self.refused(2, *call, 'neck', saying='hands, feet')
        self.refused(2, *call[:3], '--site', 'feet', saying='--age')


class Dose(CliTest):
    PERSON = ('--height', '170', '--weight', '70')
    TWO_PHASES = [(m * 60 + 900 * phase, 0 if m in (0, 12) else 10 - 2 * phase) for phase in (0, 1) for m in range(13)]

    def trace(self, lines, head='second,milliamp'):
        path = self.folder / 'trace.csv'
        path.write_text('\n'.join([head, *(f'{t},{ma}' if not isinstance(ma, str) or ma else t for t, ma in lines)]) + '\n')
        return str(path)

    def dose(self, lines, *more, site='hands', waveform='direct', age='adult'):
        return self.ok('dose', self.trace(lines), '--site', site, '--waveform', waveform, '--age', age, *more)

    def test_a_whole_session_of_the_hands(self):
        answer = self.dose(self.TWO_PHASES, *self.PERSON)
        # Trapezoids by hand: 11 min at 10 mA (10 whole minutes and two halves), 11 min at 8 mA.
        self.assertAlmostEqual(answer['charge_mA_min'], 198)
        self.assertAlmostEqual(answer['charge_mC'], 198 * 60)
        self.assertEqual([round(p['charge_mA_min'], 9) for p in answer['by_phase']], [110, 88])
        self.assertAlmostEqual(answer['net_by_limb_mA_min']['right-hand'], 22)
        self.assertAlmostEqual(answer['net_by_limb_mA_min']['left-hand'], -22)
        self.assertEqual((answer['peak_ma'], answer['limit_ma'], answer['over_limit'], answer['warnings']), (10, 20, [], []))
        # Mosteller, NEJM 1987;317:1098 and Du Bois, Arch Intern Med 1916;17:863 for 170 cm and 70 kg.
        self.assertAlmostEqual(answer['body_surface_m2']['mosteller'], 1.818, 3)
        self.assertAlmostEqual(answer['body_surface_m2']['du_bois'], 1.810, 3)
        self.assertAlmostEqual(answer['area_cm2'], answer['body_surface_m2']['du_bois'] * 87)
        self.assertAlmostEqual(answer['peak_density_ma_cm2'], 10 / answer['area_cm2'])

    def test_above_the_limit(self):
        lines = [(t, ma + 12 if t == 300 else ma) for t, ma in self.TWO_PHASES]
        answer = self.dose(lines, *self.PERSON)
        self.assertEqual(answer['over_limit'], [{'from': 290, 'to': 310, 'peak': 22}])
        self.assertIn('22 mA was above the limit of 20 mA', answer['warnings'][0])
        self.assertEqual(self.dose(lines, age='child')['limit_ma'], 15)

    def test_density_warns_and_lowers_the_limit_of_small_pads(self):
        call = dict(site='armpits', waveform='pulsed')
        answer = self.dose(self.TWO_PHASES, '--pad-area', '40', **call)
        self.assertEqual((answer['area_cm2'], answer['peak_density_ma_cm2'], answer['limit_ma']), (40, 0.25, 20))
        self.assertIn('0.2 mA/cm²', answer['warnings'][0])
        answer = self.dose(self.TWO_PHASES, '--pad-area', '16', **call)
        self.assertIn('above the limit of 8 mA for this area', answer['warnings'][0])
        self.assertIn('0.5 mA/cm²', answer['warnings'][1])
        answer = self.dose(self.TWO_PHASES, **call)
        self.assertEqual((answer['area_cm2'], answer['peak_density_ma_cm2'], answer['limit_ma']), (None, None, 12))
        answer = self.dose([(t, 1.3 * ma) for t, ma in self.TWO_PHASES], **call)
        self.assertIn('13 mA was above the limit of 12 mA for pads of unknown size', answer['warnings'][0])

    def test_the_text_names_phases_limbs_and_warnings(self):
        text = self.run_cli('dose', self.trace(self.TWO_PHASES[:-1]), '--site', 'hand-foot', '--waveform', 'direct', '--age',
                            'adult', '--first-side', 'left', *self.PERSON).stdout
        for part in ('phase 1 (left side): 110.0 mA·min in 12 min 00 s', 'left-hand: 110.0 mA·min in', '1.818 m² (Mosteller)',
                     'warning: the last reading is above zero', 'fewer than the 4 phases'):
            self.assertIn(part, text)

    def test_bad_traces_are_refused_by_line(self):
        call = ('--site', 'hands', '--waveform', 'direct', '--age', 'adult')
        for lines, saying in (
                ([(0, 0), (60, 'nan')], 'trace.csv:3: milliamp: the reading is not a number'),
                ([(0, 0), (60, 'NaN')], 'trace.csv:3: milliamp'), ([(0, 0), (60, 'inf')], 'not a number'),
                ([(0, 0), (60, '1e400')], 'not a number'), ([(0, 0), (60, -1)], 'trace.csv:3: milliamp: -1 mA is below zero'),
                ([(0, 0), (60, 10), (59, 10)], 'trace.csv:4: second: 59 s comes after 60 s'),
                ([(0, 0), (60, '1e9')], 'trace.csv:3: milliamp: 1e+09 mA cannot be'), ([('nan', 0)], 'trace.csv:2: second'),
                ([('1e9', 0)], 'trace.csv:2: second'), ([(-1, 0)], 'trace.csv:2: second'), ([(0, 'ten')], "'ten' is not a number"),
                ([(0, '10 mA')], "'10 mA' is not a number"), ([(0, '1,5')], '3 fields'), ([], 'no readings'),
                ([('0', '')], '1 fields'), ([('"0', 0)], 'quote')):
            self.refused(1, 'dose', self.trace(lines), *call, saying=saying)
        self.refused(1, 'dose', self.trace([(0, 0)], head='time,mA'), *call, saying="'second,milliamp'")
        self.refused(1, 'dose', self.folder / 'none.csv', *call, saying='none.csv')
        (self.folder / 'trace.csv').write_bytes(b'')
        self.refused(1, 'dose', self.folder / 'trace.csv', *call, saying="'second,milliamp'")

    def test_bad_options(self):
        trace = self.trace(self.TWO_PHASES)
        good = {'--site': 'hands', '--waveform': 'direct', '--age': 'adult'}
        for code, changes, saying in (
                (1, {'--site': 'armpits'}, 'pulsed current only'), (2, {'--site': 'neck'}, 'hands, feet'),
                (2, {'--age': 'old'}, 'adult, child'), (2, {'--waveform': 'square'}, 'direct, pulsed'),
                (2, {'--height': '170'}, 'both'), (1, {'--height': '1.70', '--weight': '70'}, 'centimetres'),
                (1, {'--height': '170', '--weight': 'nan'}, 'kilograms'), (1, {'--pad-area': '-3'}, 'one pad'),
                (1, {'--pad-area': 'nan'}, 'one pad'), (2, {'--pad-area': 'big'}, '--pad-area'),
                (2, {'--first-side': 'up'}, 'right, left')):
            args = [part for option in {**good, **changes}.items() for part in option]
            self.refused(code, 'dose', trace, *args, saying=saying)


class Weigh(CliTest):
    GOOD = {'--site': 'hands', '--before-mg': '1000', '--after-mg': '1500', '--minutes': '5', '--height': '170',
            '--weight': '70'}

    def args(self, changes):
        return [part for option in {**self.GOOD, **changes}.items() for part in option]

    def test_the_rate_and_the_published_limit(self):
        answer = self.ok('weigh', *self.args({}))
        self.assertAlmostEqual(answer['mg_min'], 100)
        self.assertAlmostEqual(answer['mg_min_m2'], 100 / answer['body_surface_m2'])
        # Stefaniak & Proczko, Clin Auton Res 2013;23(4)
        self.assertEqual((answer['upper_normal'], answer['above'], answer['warnings']), (46, True, []))
        for site, upper in (('feet', 50), ('armpits', 136)):
            self.assertEqual(self.ok('weigh', *self.args({'--site': site}))['upper_normal'], upper)

    def test_doubts_are_said(self):
        self.assertIn('disagree', self.ok('weigh', *self.args({'--after-mg': '1200'}))['warnings'][0])
        self.assertIn('minute', self.ok('weigh', *self.args({'--after-mg': '1200', '--minutes': '0.5'}))['warnings'][0])
        self.assertIn('not a diagnosis', self.run_cli('weigh', *self.args({})).stdout)

    def test_bad_input(self):
        for code, changes, saying in (
                (1, {'--after-mg': '999'}, 'lighter'), (1, {'--minutes': '0'}, 'minutes'), (1, {'--minutes': 'nan'}, 'minutes'),
                (1, {'--before-mg': '-1'}, 'no weight'), (1, {'--after-mg': '1e9'}, 'no weight'),
                (1, {'--height': '0'}, 'centimetres'), (1, {'--weight': '1e9'}, 'kilograms'),
                (2, {'--site': 'hand-foot'}, 'hands, feet, armpits'), (2, {'--minutes': 'five'}, '--minutes')):
            self.refused(code, 'weigh', *self.args(changes), saying=saying)


if __name__ == '__main__':
    unittest.main()
