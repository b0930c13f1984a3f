//! Reads the oracle cases and builds models from them.

use std::path::Path;

use serde::Deserialize;
use tallywatt::sharing::model::{Load, Model};
use tallywatt::sharing::set::LoadSet;

#[derive(Clone, Debug, Deserialize)]
pub struct Node {
    pub id: String,
    pub parent: Option<String>,
    #[serde(rename = "limit_mA")]
    pub limit: i64,
    pub continuous_permille: i64,
    #[serde(rename = "surge_mA")]
    pub surge: Option<i64>,
    pub sockets: Option<u32>,
}

#[derive(Clone, Debug, Deserialize)]
pub struct CaseLoad {
    pub id: String,
    #[serde(rename = "running_mA")]
    pub running: i64,
    #[serde(rename = "starting_mA")]
    pub starting: i64,
    pub continuous: bool,
    pub priority: String,
    pub weight: u64,
    pub allowed: Vec<String>,
    pub always: bool,
    pub hours: Option<Vec<u8>>,
    pub window: Option<Vec<u8>>,
    pub after: Vec<String>,
}

#[derive(Clone, Debug, Deserialize)]
pub struct Change {
    pub kind: String,
    pub cost: u64,
    pub node: Option<String>,
    pub load: Option<String>,
    pub receptacle: Option<String>,
    pub to: Option<String>,
    #[serde(rename = "limit_mA")]
    pub limit: Option<i64>,
    #[serde(rename = "surge_mA")]
    pub surge: Option<i64>,
    #[serde(rename = "running_mA")]
    pub running: Option<i64>,
    #[serde(rename = "starting_mA")]
    pub starting: Option<i64>,
}

#[derive(Clone, Debug, Deserialize)]
pub struct Case {
    pub name: String,
    pub nodes: Vec<Node>,
    pub loads: Vec<CaseLoad>,
    plugged: std::collections::BTreeMap<String, String>,
    start_set: Vec<String>,
    pub changes: Vec<Change>,
}

#[derive(Debug, Deserialize)]
pub struct Expected {
    pub plan: ExpectedPlan,
    pub together_maximal: Option<ListedFamily>,
    pub never_together_minimal: Option<ListedFamily>,
    pub never_together_upto3: Option<ListedFamily>,
    pub start_order: ExpectedStart,
    pub turns: ExpectedTurns,
    pub repair: ExpectedRepair,
}

#[derive(Debug, Deserialize)]
pub struct ExpectedPlan {
    pub must_weight: u64,
    pub wish_weight: u64,
    pub use_permille: i64,
}

#[derive(Debug, Deserialize)]
pub struct ListedFamily {
    pub count: usize,
    pub sha256: String,
    pub sets: Option<Vec<Vec<String>>>,
}

#[derive(Debug, Deserialize)]
pub struct ExpectedStart {
    #[serde(rename = "least_peak_mA")]
    pub least_peak_ma: i64,
    #[serde(rename = "worst_peak_mA")]
    pub worst_peak_ma: i64,
    pub root_limit_holds: bool,
    pub order_exists_all_nodes: bool,
}

#[derive(Debug, Deserialize)]
pub struct ExpectedTurns {
    pub always_hold: bool,
    pub cannot_run: Vec<String>,
    pub fewest_turns: Option<usize>,
    pub fewest_hours_in_windows: Option<usize>,
}

#[derive(Debug, Deserialize)]
pub struct ExpectedRepair {
    pub least_cost: Option<u64>,
}

fn read<T: for<'a> Deserialize<'a>>(path: &Path) -> T {
    let text = std::fs::read_to_string(path).unwrap_or_else(|e| panic!("{}: {e}", path.display()));
    serde_json::from_str(&text).unwrap_or_else(|e| panic!("{}: {e}", path.display()))
}

impl Expected {
    pub fn read(path: &Path) -> Self {
        #[derive(Deserialize)]
        struct File {
            expected: Expected,
        }
        read::<File>(path).expected
    }
}

impl Case {
    pub fn read(path: &Path) -> Self {
        read(path)
    }

    fn load(&self, id: &str) -> usize {
        self.loads.iter().position(|load| load.id == id).expect("a load")
    }

    fn node(&self, id: &str) -> usize {
        self.nodes.iter().position(|node| node.id == id).expect("a node")
    }

    /// Returns the indices of the nodes that are places, in the order of the case.
    fn receptacles(&self) -> Vec<usize> {
        (0..self.nodes.len()).filter(|node| self.nodes[*node].sockets.is_some_and(|count| count > 0)).collect()
    }

    fn place(&self, id: &str) -> usize {
        let node = self.node(id);
        self.receptacles().iter().position(|r| *r == node).expect("a receptacle")
    }

    pub fn model(&self) -> Model {
        let receptacles = self.receptacles();
        let mut model = Model {
            loads: self
                .loads
                .iter()
                .map(|load| Load {
                    running: load.running,
                    starting: load.starting,
                    continuous: load.continuous,
                    must: load.priority == "must",
                    weight: load.weight,
                    allowed: load.allowed.iter().map(|id| self.place(id)).collect(),
                })
                .collect(),
            sockets: receptacles.iter().map(|node| self.nodes[*node].sockets.unwrap_or(0)).collect(),
            ..Model::default()
        };
        for (index, node) in self.nodes.iter().enumerate() {
            let under: Vec<bool> = receptacles
                .iter()
                .map(|receptacle| {
                    let mut at = Some(*receptacle);
                    while let Some(here) = at {
                        if here == index {
                            return true;
                        }
                        at = self.nodes[here].parent.as_ref().map(|id| self.node(id));
                    }
                    false
                })
                .collect();
            let balanced = node.parent.is_some();
            model.thermal(node.limit, node.continuous_permille, balanced, |p| under[p]);
            if let Some(surge) = node.surge {
                model.surge(surge, |place| under[place]);
            }
        }
        model.set_moments((0..24).map(|hour| {
            (0..self.loads.len())
                .filter(|load| self.loads[*load].hours.as_ref().is_none_or(|h| h.contains(&hour)))
                .collect()
        }));
        model
    }

    pub fn plugged(&self) -> Vec<Option<usize>> {
        self.loads.iter().map(|load| self.plugged.get(&load.id).map(|id| self.place(id))).collect()
    }

    pub fn ids(&self, set: &LoadSet) -> Vec<&str> {
        let mut ids: Vec<&str> = set.iter().map(|load| self.loads[load].id.as_str()).collect();
        ids.sort_unstable();
        ids
    }

    pub fn start_set(&self) -> LoadSet {
        self.start_set.iter().map(|id| self.load(id)).collect()
    }

    pub fn after(&self) -> Vec<LoadSet> {
        self.loads.iter().map(|load| load.after.iter().map(|id| self.load(id)).collect()).collect()
    }

    pub fn always(&self) -> LoadSet {
        (0..self.loads.len()).filter(|load| self.loads[*load].always).collect()
    }

    /// Returns, for each hour of the day, the loads whose window includes it.
    pub fn windows(&self) -> Vec<LoadSet> {
        (0..24)
            .map(|hour| {
                (0..self.loads.len())
                    .filter(|l| self.loads[*l].window.as_ref().is_none_or(|w| w.contains(&hour)))
                    .collect()
            })
            .collect()
    }

    /// Allows at most one change of limit or surge at a node, and one swap and one move of a load.
    pub fn may_combine(&self, changes: &[usize]) -> bool {
        let key = |change: &Change| match change.kind.as_str() {
            "limit" | "surge" => ("node".to_owned(), change.node.clone(), None),
            _ => (change.kind.clone(), change.load.clone(), change.receptacle.clone()),
        };
        let keys: Vec<_> = changes.iter().map(|c| key(&self.changes[*c])).collect();
        keys.iter().enumerate().all(|(i, key)| !keys[..i].contains(key))
    }

    /// Returns the case with the changes made.
    pub fn after_changes(&self, changes: &[usize]) -> Self {
        let mut case = self.clone();
        for change in changes.iter().map(|c| &self.changes[*c]) {
            if let Some(node) = &change.node {
                let node = case.node(node);
                let node = &mut case.nodes[node];
                node.limit = change.limit.unwrap_or(node.limit);
                node.surge = change.surge.or(node.surge);
            }
            if let Some(id) = &change.load {
                let load = case.load(id);
                let load = &mut case.loads[load];
                load.running = change.running.unwrap_or(load.running);
                load.starting = change.starting.unwrap_or(load.starting);
                if change.kind == "allow" {
                    load.allowed.extend(change.receptacle.clone());
                }
                if let Some(to) = &change.to {
                    case.plugged.insert(id.clone(), to.clone());
                }
            }
        }
        for change in changes.iter().map(|c| &self.changes[*c]) {
            if let ("drop", Some(id)) = (change.kind.as_str(), &change.load) {
                case.plugged.remove(id);
            }
        }
        case
    }

    /// Whether everything plugged in may be on at once. Computed without the model, because larger cases ask tens of
    /// thousands of times and as a second opinion on the model.
    pub fn holds(&self) -> bool {
        let parents: Vec<Option<usize>> =
            self.nodes.iter().map(|node| node.parent.as_ref().map(|id| self.node(id))).collect();
        let count = self.nodes.len();
        let (mut thermal, mut sum, mut peak) = (vec![0; count], vec![0; count], vec![0; count]);
        let mut plugs = vec![0; count];
        for load in &self.loads {
            let Some(at) = self.plugged.get(&load.id) else {
                continue;
            };
            if !load.allowed.contains(at) {
                return false;
            }
            let mut next = Some(self.node(at));
            plugs[self.node(at)] += 1;
            while let Some(node) = next {
                let permille = self.nodes[node].continuous_permille;
                let factor = if load.continuous { 1000 } else { permille };
                thermal[node] += factor * load.running;
                sum[node] += load.running;
                peak[node] = load.starting.saturating_sub(load.running).max(peak[node]);
                next = parents[node];
            }
        }
        self.nodes.iter().enumerate().all(|(n, node)| {
            thermal[n] <= node.continuous_permille * node.limit
                && node.surge.is_none_or(|surge| sum[n] + peak[n] <= surge)
                && plugs[n] <= node.sockets.unwrap_or(0)
        })
    }
}
