#!/usr/bin/python3
"""The verbs that estimate and rehearse: `fit`, `rehearsal` and the score of `outlook`.

Usage: cli_outlook_test.py PATH-OF-FIRSTDEW-CLI
"""
import json
import unittest

from cli import CliTest


class Fit(CliTest):
    def intervals(self, text):
        path = self.folder / 'intervals.csv'
        path.write_text(text, encoding='utf-8')
        return path

    def test_the_answer_has_its_keys_and_hangs_together(self):
        path = self.intervals('left,right\n6,8\n5,6\n9,\n7,9\n0,4\n6,6\n')
        for family, names in (('weibull', {'shape', 'scale'}), ('lognormal', {'meanlog', 'sdlog'})):
            answer = self.ok('fit', path, '--family', family, '--prior')
            self.assertEqual(answer['family'], family)
            self.assertEqual(set(answer['estimate']), names)
            self.assertEqual(set(answer['se']), names)
            self.assertEqual((answer['n'], answer['events']), (6, 5))
            self.assertEqual(answer['quantiles']['0.5'], answer['median'])
            for quantiles in (answer['quantiles'], answer['posterior']):
                values = [quantiles[p] for p in ('0.1', '0.2', '0.5', '0.8', '0.9')]
                self.assertEqual(values, sorted(values))
            low, high = answer['median_limits']
            self.assertTrue(low < answer['median'] < high)
            self.assertAlmostEqual(sum(m['mass'] for m in answer['turnbull']), 1)
            self.assertGreater(answer['median'], 4)
            self.assertLess(answer['median'], 9)

    def test_a_wider_level_gives_wider_limits_and_nothing_is_said_of_a_prior_unasked(self):
        path = self.intervals('left,right\n6,8\n5,6\n9,\n7,9\n')
        narrow = self.ok('fit', path, '--family', 'weibull', '--level', '0.5')
        wide = self.ok('fit', path, '--family', 'weibull', '--level', '0.99')
        self.assertLess(wide['median_limits'][0], narrow['median_limits'][0])
        self.assertGreater(wide['median_limits'][1], narrow['median_limits'][1])
        self.assertNotIn('posterior', narrow)

    def test_bad_input_is_named_by_line(self):
        for text, saying in (
                ('', 'left,right'), ('a,b\n1,2\n', 'line 1'), ('left,right\n', 'no interval'),
                ('left,right\n1,2\n3\n', 'line 3'), ('left,right\n1,2,3\n', 'line 2'),
                ('left,right\nx,2\n', "'x' is no number"), ('left,right\n1,2x\n', "'2x' is no number"),
                ('left,right\n5,4\n', 'line 2'), ('left,right\n-1,4\n', 'line 2'), ('left,right\nnan,4\n', 'line 2'),
                ('left,right\n1,inf\n', 'line 2'), ('left,right\n3,\n4,\n', 'censored'), ('left,right\n3,4\n', 'spread')):
            self.refused(1, 'fit', self.intervals(text), '--family', 'weibull', saying=saying)
        path = self.intervals('left,right\n1,2\n3,4\n')
        self.refused(2, 'fit', path, '--family', 'gamma', saying='weibull, lognormal')
        self.refused(2, 'fit', path, '--family', 'weibull', '--level', '1', saying='--level')
        self.refused(2, 'fit', path, saying='--family')
        self.refused(1, 'fit', self.folder / 'none.csv', '--family', 'weibull', saying='none.csv')


class Comparison(CliTest):
    def spells(self, text):
        path = self.folder / 'spells.csv'
        path.write_text(text, encoding='utf-8')
        return path

    def test_how_long_a_shorter_session_holds(self):
        path = self.spells('left,right,shorter\n9,10,0\n4,5,1\n8,10,0\n5,6,1\n9,11,0\n4,6,1\n12,,0\n')
        held = self.ok('fit', path, '--family', 'weibull', '--shorter')
        self.assertEqual(held['n'], 7)
        self.assertTrue(0.05 <= held['limits'][0] < held['ratio'] < held['limits'][1] < 1)
        self.assertEqual(held['answer'], 'less')
        self.assertAlmostEqual(held['shorter_median'], held['ratio'] * held['usual_median'])
        for text, saying in (('left,right\n1,2\n', 'left,right,shorter'), ('left,right,shorter\n1,2,2\n', 'shorter: write 0'),
                             ('left,right,shorter\n1,2\n', 'line 2'), ('left,right,shorter\n', 'no interval'),
                             ('left,right,shorter\n3,,0\n4,,1\n', 'censored')):
            self.refused(1, 'fit', self.spells(text), '--family', 'weibull', '--shorter', saying=saying)

    def test_one_is_refused_where_it_may_not_begin_and_the_outlook_tells_where_one_stands(self):
        self.ok('demo', '--out', self.store, '--today', '2026-03-02')
        call = ('comparison', '--store', self.store, '--site', 'hands', '--date', '2026-03-02')
        answer = self.ok(*call)
        self.assertIsNone(answer['comparison'])
        self.assertIsNotNone(answer['bar'])
        self.refused(1, *call, '--begin', saying='--begin')
        self.refused(1, *call, '--leave', saying='no comparison runs')
        self.refused(2, *call, '--begin', '--leave', saying='--leave')
        self.refused(2, *call, '--begin', '--shorter', '0.4', saying='--shorter')
        site, = self.ok('outlook', '--store', self.store, '--today', '2026-03-02', '--site', 'hands')['sites']
        self.assertIsNone(site['comparison'])
        # A record from elsewhere may hold one.
        fact = {'id': 'c' * 32, 'person': self.ok('outlook', '--store', self.store, '--today', '2026-03-02')['person'],
                'happened': '2026-03-01T21:00', 'recorded_ms': 1772400000000, 'kind': 'comparison',
                'is': {'site': 'hands', 'on': True, 'shorter': 0.5, 'seed': 7}}
        file = self.folder / 'one.json'
        self.ok('export', '--store', self.store, '--format', 'json', '--out', file)
        record = json.loads(file.read_text(encoding='utf-8'))
        record['facts'].append(fact)
        file.write_text(json.dumps(record), encoding='utf-8')
        self.ok('import', file, '--store', self.store)
        site, = self.ok('outlook', '--store', self.store, '--today', '2026-03-02', '--site', 'hands')['sites']
        self.assertEqual(site['comparison']['since'], '2026-03-01')
        self.assertEqual((site['comparison']['pair'], site['comparison']['pairs'], site['comparison']['spells']), (1, 8, 0))
        self.assertIn(site['comparison']['next'], ('usual', 'shorter'))
        self.ok(*call, '--leave')
        site, = self.ok('outlook', '--store', self.store, '--today', '2026-03-02', '--site', 'hands')['sites']
        self.assertEqual(site['comparison']['ended'], 'left')
        self.assertFalse(site['comparison']['runs'])


class Rehearsal(CliTest):
    CALL = ('rehearsal', '--people', '12', '--days', '120', '--seed', '3')

    def world(self, content):
        path = self.folder / 'world.json'
        path.write_text(content if isinstance(content, str) else json.dumps(content), encoding='utf-8')
        return path

    def test_the_answer_has_its_keys(self):
        answer = self.ok(*self.CALL)
        self.assertEqual(set(answer['policies']), {'early', 'weekly', 'late', 'first-clammy', 'weekly-or-clammy',
                                                   'mean-or-clammy', 'knowing', 'seeing', 'oracle'})
        for figures in answer['policies'].values():
            self.assertEqual(set(figures), {'sessions_per_year', 'clammy_days_per_year', 'sweating_days_per_year',
                                            'minutes_per_year', 'cost_per_year', 'above_early', 'above_early_error'})
            self.assertAlmostEqual(figures['above_early'],
                                   figures['cost_per_year'] - answer['policies']['early']['cost_per_year'])
            self.assertGreaterEqual(figures['above_early_error'], 0)
            self.assertAlmostEqual(figures['cost_per_year'], figures['sessions_per_year'] +
                                   figures['clammy_days_per_year'] + figures['sweating_days_per_year'])
            self.assertAlmostEqual(figures['minutes_per_year'], 20 * figures['sessions_per_year'])
        calibration = answer['calibration']
        self.assertEqual(set(calibration['coverage']), {'0.5', '0.8', '0.95'})
        self.assertEqual(len(calibration['pit']), 10)
        self.assertEqual(sum(calibration['pit']), calibration['spells'])
        self.assertEqual(len(calibration['pit_one_each']), 10)
        self.assertLessEqual(sum(calibration['pit_one_each']), 12)
        self.assertTrue(0 <= calibration['pit_test']['p'] <= 1)
        self.assertTrue(0 < calibration['brier'] < 0.25)
        self.assertTrue(0 <= calibration['due_hit_rate'] <= 1)
        self.assertEqual(set(answer['conduct']), {'calls', 'on_dry', 'as_named', 'restarts', 'restarts_not_sweating'})
        self.assertGreater(answer['people_days_per_second'], 0)

    def test_the_seed_alone_decides_and_the_threads_do_not(self):
        def figures(*call):
            answer = self.ok(*call)
            del answer['people_days_per_second']
            return answer
        once = figures(*self.CALL)
        self.assertEqual(once, figures(*self.CALL, '--threads', '3'))
        self.assertNotEqual(once, figures(*self.CALL[:-1], '4'))

    def test_a_world_is_heeded(self):
        usual = self.ok(*self.CALL)['policies']['late']
        shorter = self.ok(*self.CALL, '--world', self.world({'median_days': {'median': 4}}))['policies']['late']
        longer = self.ok(*self.CALL, '--world', self.world({'median_days': {'median': 60, 'sdlog': 0.1}}))['policies']['late']
        self.assertGreater(shorter['sweating_days_per_year'], usual['sweating_days_per_year'])
        self.assertLess(longer['sweating_days_per_year'], usual['sweating_days_per_year'])
        everything = {'median_days': {'median': 10, 'sdlog': 0.6}, 'shape': {'median': 3, 'sdlog': 0.25},
                      'days_clammy_before_sweating': {'mean': 4}, 'checkin_missed': 0.15,
                      'false_clammy': {'calm': 0.02, 'stirred': 0.15}, 'missed_clammy': 0.10, 'stirred_days': 0.10,
                      'season': {'amplitude': 0.0, 'period': 365}, 'wear_off': 0.0, 'session_before_checkin': 0.5,
                      'false_wet': 0, 'hot_runs': 0, 'weekend_gaps': 0, 'habit_days': 0, 'felt_in_advance': 0,
                      'change': {'day': 0, 'factor': 1}, 'ar1': 0, 'dose': 0, 'times': 'weibull'}
        self.assertEqual(self.ok(*self.CALL, '--world', self.world(everything))['policies']['late'], usual)

    def test_bad_input_is_named(self):
        for content, saying in (('[]', 'JSON object'), ('{', 'JSON object'), ({'medium': 3}, 'no key'),
                                ({'wear_off': 'much'}, 'number'), ({'times': 'normal'}, 'loglogistic'), ({'times': 3}, 'gamma'), ({'wear_off': 2}, 'wear_off'),
                                ({'season': {'amplitude': -1}}, 'season.amplitude')):
            self.refused(1, *self.CALL, '--world', self.world(content), saying=saying)
        self.refused(1, 'rehearsal', '--people', '0', '--days', '9', '--seed', '1', saying='people')
        self.refused(1, 'rehearsal', '--people', '9', '--days', '0', '--seed', '1', saying='days')
        self.refused(2, 'rehearsal', '--people', '9', '--days', '9', saying='--seed')
        self.refused(2, 'rehearsal', '--people', 'many', '--days', '9', '--seed', '1', saying='--people')


class Score(CliTest):
    def test_what_was_forecast_is_judged_and_told_as_on_the_page(self):
        self.ok('demo', '--out', self.store, '--today', '2026-03-02')
        call = ('outlook', '--store', self.store, '--today', '2026-03-02', '--site', 'hands')
        hands, = self.ok(*call)['sites']
        score = hands['score']
        self.assertEqual(score['verdict'], 'fits')
        self.assertGreaterEqual(score['days'], 20)
        self.assertLess(score['e_value'], 20)
        self.assertTrue(0 < len(score['lines']) <= 3)
        for line in score['lines']:
            self.assertGreaterEqual(line['days'], 10)
            self.assertTrue(0 <= line['damp'] <= line['days'])
        self.assertLessEqual(sum(line['days'] for line in score['lines']), score['days'])
        self.assertEqual([d['date'] for d in hands['next_days']], ['2026-03-03', '2026-03-05', '2026-03-09'])
        text = self.run_cli(*call).stdout
        for line in score['lines']:
            said = 'about {of} in {in}'.format(**line['said'])
            self.assertIn(f"when {said} was forecast for the next day, it came on {line['damp']} of {line['days']} days", text)
        self.assertIn('forecasts: fits', text)

    def test_no_shortening_is_told_where_there_is_none(self):
        self.ok('demo', '--out', self.store, '--today', '2026-03-02')
        hands, = self.ok('outlook', '--store', self.store, '--today', '2026-03-02', '--site', 'hands')['sites']
        self.assertIsNone(hands['shortening']['since'])
        self.assertLess(hands['shortening']['e_value'], 20)


if __name__ == '__main__':
    unittest.main()
